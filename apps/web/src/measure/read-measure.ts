import { fromSi, parseQuantity, type QuantityFault, type QuantityKind, toSi, UNITS, type Unit, type UnitOf } from "@halfturn/engine/units";
import type { Units } from "../device/settings.js";
import { FILE_UNITS, type Measure, type ShownAs, shownAs } from "./measures.js";

export interface Bounds {
  readonly minimum?: number;
  /** The value has to be greater than this. */
  readonly above?: number;
  readonly maximum?: number;
  /** The value has to be less than this. */
  readonly below?: number;
}

/** What is wrong with a text. Bounds are in the unit of the case file. */
export type MeasureFault =
  | { readonly code: "unreadable"; readonly fault: Pick<QuantityFault, "code" | "params"> }
  | { readonly code: "out-of-bounds"; readonly bounds: Bounds }
  | { readonly code: "not-whole" };

/** A value in the unit of the case file, null for an empty field, or what is wrong. */
export type ReadMeasure = { readonly ok: true; readonly value: number | null } | { readonly ok: false; readonly fault: MeasureFault };

/** Digits beyond these are the rounding of the way to SI and back. */
const SIGNIFICANT_DIGITS = 12;
const rounded = (value: number): number => Number(value.toPrecision(SIGNIFICANT_DIGITS)) + 0;

const inUnit = (value: number, from: Unit, to: Unit): number => (from === to ? value : rounded(fromSi(toSi(value, from) as never, to)));

const isWithin = (value: number, { minimum, above, maximum, below }: Bounds): boolean =>
  (minimum === undefined || value >= minimum) &&
  (above === undefined || value > above) &&
  (maximum === undefined || value <= maximum) &&
  (below === undefined || value < below);

/** Reads what was typed: comma or point, with or without a unit; without one it is in the unit shown beside the field. */
export function readMeasure(text: string, measure: Measure, units: Units, bounds: Bounds): ReadMeasure {
  if (text.trim() === "") return { ok: true, value: null };
  const fileUnit = FILE_UNITS[measure];
  const shown = shownAs(measure, units);
  const amount = fileUnit === null ? readNumber(text, shown) : readQuantity(text, fileUnit, shown.unit ?? fileUnit);
  if (typeof amount !== "number") return { ok: false, fault: { code: "unreadable", fault: amount } };
  if (measure === "count" && !Number.isInteger(amount)) return { ok: false, fault: { code: "not-whole" } };
  return isWithin(amount, bounds) ? { ok: true, value: amount } : { ok: false, fault: { code: "out-of-bounds", bounds } };
}

function readQuantity(text: string, fileUnit: Unit, defaultUnit: Unit): number | QuantityFault {
  const kind: QuantityKind = UNITS[fileUnit].kind;
  const read = parseQuantity(text, { kind, defaultUnit: defaultUnit as UnitOf<typeof kind> });
  return read.ok ? inUnit(read.amount, read.unit, fileUnit) : read;
}

/** A bare number is read as degrees would be, but may carry no unit other than the one shown beside it. */
function readNumber(text: string, { chip, perFileUnit = 1 }: ShownAs): number | Pick<QuantityFault, "code" | "params"> {
  const bare = chip !== "" && text.trim().endsWith(chip) ? text.trim().slice(0, -chip.length) : text;
  const unit = /[^\d\s.,+\-\u2212\u2013/½¼¾⅛⅜⅝⅞]+/.exec(bare);
  if (unit && /\d/.test(bare)) return { code: "quantity.unexpected", params: { found: unit[0] } };
  const read = parseQuantity(bare, { kind: "angle", defaultUnit: "deg" });
  if (!read.ok) return read;
  return perFileUnit === 1 ? read.amount : rounded(read.amount / perFileUnit);
}

/** A value of the case file as text for a field, in the unit shown beside it. */
export function measureText(value: number, measure: Measure, units: Units, decimalSign: "." | ","): string {
  const fileUnit = FILE_UNITS[measure];
  const { unit, decimals, perFileUnit = 1 } = shownAs(measure, units);
  const shown = fileUnit === null || unit === null ? value * perFileUnit : inUnit(value, fileUnit, unit);
  return String(Number(shown.toFixed(decimals)) + 0).replace(".", decimalSign);
}
