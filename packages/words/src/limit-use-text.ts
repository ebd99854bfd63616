import type { LimitParams } from "@halfturn/engine/correction";
import type { Catalogue } from "./catalogue.js";
import { type CorrectionNames, isOfWhole } from "./correction-reader.js";
import type { Numbers } from "./numbers/numbers.js";

/** Limit, value, bound and state of a limit use, as the sentences of the catalogue take them. */
export function limitUseText(
  use: LimitParams,
  { correction, numbers }: Pick<Catalogue, "correction" | "numbers">,
  names: CorrectionNames,
): [limit: string, value: string, bound: string, state: string] {
  const part = isOfWhole(use.limit) ? names.driveline(use.driveline) : names.part(use.of, use.driveline);
  const { valueDeg, limitDeg, valueRadS2 = 0, limitRadS2 = 0 } = use;
  const [value, bound] =
    valueDeg === undefined || limitDeg === undefined
      ? [numbers.acceleration(valueRadS2), numbers.acceleration(limitRadS2)]
      : anglesApart(valueDeg, limitDeg, numbers);
  return [correction.limitOf(correction.limits[use.limit], part), value, bound, names.state(use.state)];
}

/** "3.00° against a limit of 3.00°" would read as a contradiction: two angles that differ get so many decimals, up to four, that they are seen to. */
const MOST_DECIMALS = 4;

function anglesApart(value: number, bound: number, numbers: Numbers): [string, string] {
  const short: [string, string] = [numbers.angle(value), numbers.angle(bound)];
  if (short[0] !== short[1] || value === bound) return short;
  for (let decimals = 3; ; decimals++) {
    const pair: [string, string] = [`${numbers.plain(value, decimals)}°`, `${numbers.plain(bound, decimals)}°`];
    if (pair[0] !== pair[1] || decimals === MOST_DECIMALS) return pair;
  }
}
