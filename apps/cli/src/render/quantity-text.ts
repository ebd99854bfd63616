import type { Quantity } from "@halfturn/casefile";
import type { Numbers } from "@halfturn/words";

/** An interval whose value lies further from its middle than this share of its width is written out instead of as ±. */
const LOPSIDED = 0.1;

/** "3.10° ± 0.21°", or value and interval where the interval is lopsided; the sign is left to the word that says which end is lower. */
export function signlessAngle(quantity: NonNullable<Quantity>, numbers: Numbers): string {
  const [low, high] = quantity.interval95;
  const half = (high - low) / 2;
  const lopsided = Math.abs((high + low) / 2 - quantity.value) > LOPSIDED * (high - low);
  return lopsided
    ? `${numbers.angle(Math.abs(quantity.value))} (${numbers.angleInterval(low, high)})`
    : numbers.angleWithin(Math.abs(quantity.value), half);
}

export const angleOf = (quantity: Quantity, numbers: Numbers, unknown: string): string =>
  quantity === null ? unknown : numbers.angle(quantity.value);

export const angleIntervalOf = (quantity: Quantity, numbers: Numbers): string =>
  quantity === null ? "" : numbers.angleInterval(...quantity.interval95);

/** Decimals that give two digits to a half width, none beyond a thousandth. */
const decimalsFor = (half: number): number => (half > 0 ? Math.min(3, Math.max(0, 1 - Math.floor(Math.log10(half)))) : 3);

/** "12.05 ± 0.11", without a unit: a value whose interval lies evenly about it. */
export function valueWithin(quantity: Quantity, numbers: Numbers, unknown: string): string {
  if (quantity === null) return unknown;
  const [low, high] = quantity.interval95;
  const half = (high - low) / 2;
  const decimals = decimalsFor(half);
  return `${numbers.plain(quantity.value, decimals)} ± ${numbers.plain(half, decimals)}`;
}

/** A quantity in another unit, by a positive factor. */
export const scaled = (quantity: Quantity, factor: number): Quantity =>
  quantity && {
    value: quantity.value * factor,
    u: quantity.u * factor,
    interval95: [quantity.interval95[0] * factor, quantity.interval95[1] * factor],
  };
