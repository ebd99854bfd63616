import { fromSi, toSi } from "@halfturn/engine/units";
import type { Numbers } from "@halfturn/words";

const MOST_DECIMALS = 3;

/** As many decimals as it has, so that two values that differ look different. */
const plain = (value: number, numbers: Numbers): string => {
  const [, fraction = ""] = String(Number(value.toFixed(MOST_DECIMALS))).split(".");
  return numbers.plain(value, fraction.length);
};

/** A number of the case file in the units of the reader: the end of its key says what it is. */
export function valueNumber(value: number, key: string, numbers: Numbers): string {
  const { lengthUnit, speedUnit } = numbers;
  // The file has it for each millimetre: for an inch it is as many times more.
  if (/DegPerMm$/.test(key)) return `${plain(value * fromSi(toSi(1, lengthUnit), "mm"), numbers)} °/${lengthUnit}`;
  if (/Mm$/.test(key)) return `${plain(fromSi(toSi(value, "mm"), lengthUnit), numbers)} ${lengthUnit}`;
  if (/Kmh$/.test(key)) return `${plain(fromSi(toSi(value, "km/h"), speedUnit), numbers)} ${speedUnit}`;
  if (/Rpm$/.test(key)) return `${plain(value, numbers)} rpm`;
  if (/Deg$|^deg$/.test(key)) return `${plain(value, numbers)}°`;
  return plain(value, numbers);
}
