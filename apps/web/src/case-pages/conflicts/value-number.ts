import { fromSi, toSi } from "@halfturn/engine/units";
import type { Numbers } from "@halfturn/words";

const MOST_DECIMALS = 3;
/** Finer than any two numbers of a case file that somebody typed. */
const DISTINCT_DECIMALS = 12;

/** As many decimals as it has, within reason. */
const plain = (value: number, numbers: Numbers): string => {
  const [, fraction = ""] = String(Number(value.toFixed(MOST_DECIMALS))).split(".");
  return numbers.plain(value, fraction.length);
};

interface Shown {
  readonly value: number;
  readonly unit: string;
  /** As it is rounded elsewhere. */
  readonly text: string;
}

/** A number of the case file in the units of the reader: the end of its key says what it is. */
function shown(value: number, key: string, numbers: Numbers): Shown {
  const { lengthUnit, speedUnit } = numbers;
  const as = (converted: number, unit: string): Shown => ({ value: converted, unit, text: `${plain(converted, numbers)}${unit}` });
  // The file has it for each millimetre: for an inch it is as many times more.
  if (/DegPerMm$/.test(key)) return as(value * fromSi(toSi(1, lengthUnit), "mm"), `\u00a0°/${lengthUnit}`);
  if (/Mm$/.test(key)) return { ...as(fromSi(toSi(value, "mm"), lengthUnit), `\u00a0${lengthUnit}`), text: numbers.length(value) };
  if (/Kmh$/.test(key)) return { ...as(fromSi(toSi(value, "km/h"), speedUnit), `\u00a0${speedUnit}`), text: numbers.roadSpeed(value) };
  if (/Rpm$/.test(key)) return as(value, "\u00a0rpm");
  if (/Deg$|^deg$/.test(key)) return as(value, "°");
  return as(value, "");
}

/** Rounded as everywhere; with more decimals where one of the `others`, which stand beside it under the same key, would look the same and is not. */
export function valueNumber(value: number, key: string, numbers: Numbers, others: readonly number[] = []): string {
  const own = shown(value, key, numbers);
  const different = others.filter((other) => other !== value).map((other) => shown(other, key, numbers));
  if (different.every(({ text }) => text !== own.text)) return own.text;
  let decimals = 1;
  const isTaken = (): boolean => different.some((other) => numbers.plain(other.value, decimals) === numbers.plain(own.value, decimals));
  while (decimals < DISTINCT_DECIMALS && isTaken()) decimals += 1;
  return `${numbers.plain(own.value, decimals)}${own.unit}`;
}

/** The numbers that stand under each key anywhere in some values of the case file. */
export function numbersByKey(values: readonly unknown[], key: string): ReadonlyMap<string, readonly number[]> {
  const found = new Map<string, number[]>();
  const look = (value: unknown, under: string): void => {
    if (typeof value === "number") found.set(under, [...(found.get(under) ?? []), value]);
    else if (Array.isArray(value)) for (const item of value) look(item, under);
    else if (typeof value === "object" && value !== null) for (const [inner, item] of Object.entries(value)) look(item, inner);
  };
  for (const value of values) look(value, key);
  return found;
}
