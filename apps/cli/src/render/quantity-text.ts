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
