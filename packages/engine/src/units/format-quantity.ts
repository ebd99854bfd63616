import { fromSi, type QuantityKind, type SiOf, UNITS, type UnitOf } from "./unit-table.js";

export interface QuantityFormat<Kind extends QuantityKind> {
  readonly kind: Kind;
  readonly unit: UnitOf<Kind>;
  /** Digits after the decimal sign, 0 to 20. */
  readonly decimals: number;
  readonly decimalSign?: "." | "," | undefined;
  /** Whether the unit follows the number; true unless given. */
  readonly withUnit?: boolean | undefined;
}

/** Digits beyond these are the rounding of the way to SI and back: 0.25 must not print as 0.2 for having been in radians. */
const SIGNIFICANT_DIGITS = 13;

/**
 * An SI value as text in a unit with fixed decimals; `parseQuantity` reads it back. No sign for thousands, and zero never has a minus.
 * Throws RangeError for a value that is not finite or decimals out of range.
 */
export function formatQuantity<Kind extends QuantityKind>(value: SiOf[Kind], format: QuantityFormat<Kind>): string {
  const { unit, decimals, decimalSign = ".", withUnit = true } = format;
  const amount = fromSi(value as never, unit);
  if (!Number.isFinite(amount)) throw new RangeError(`only a finite value can be printed, got ${value}`);
  const digits = Number(amount.toPrecision(SIGNIFICANT_DIGITS)).toFixed(decimals);
  const unsigned = Number(digits) === 0 ? digits.replace("-", "") : digits;
  return unsigned.replace(".", decimalSign) + (withUnit ? UNITS[unit].suffix : "");
}
