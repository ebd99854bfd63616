import type { CaseGauging } from "@halfturn/casefile";
import type { Numbers } from "@halfturn/words";
import type { Units } from "../../../device/settings.js";
import { type GaugeStep, takenAt } from "../model/step.js";
import { lengthText } from "../model/tape-text.js";

/** What stands at a step, as its display showed it: the last one, with how many there are; null where nothing was taken. */
export function stepValue(step: GaugeStep, gauging: CaseGauging, numbers: Numbers, units: Units): string | null {
  const taken = takenAt(step, gauging);
  const last = taken.at(-1);
  if (last === undefined) return null;
  const repeats = taken.length > 1 ? ` ×${taken.length}` : "";
  if (step.kind !== "tape") return `${numbers.gaugedAngle(gauging.readings[last]?.deg ?? 0)}${repeats}`;
  const heading = gauging.headings?.[last];
  if (!heading) return null;
  return `${"deg" in heading ? numbers.gaugedAngle(heading.deg) : lengthText(heading.lateralMm, units, numbers.plain(0.5, 1).charAt(1) === "," ? "," : ".")}${repeats}`;
}
