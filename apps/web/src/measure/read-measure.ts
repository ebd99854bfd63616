import { fromSi, parseQuantity, type QuantityFault, type QuantityKind, toSi, UNITS, type Unit, type UnitOf } from "@halfturn/engine/units";
import type { Units } from "../device/settings.js";
import { FILE_UNITS, type Measure, shownAs } from "./measures.js";

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
  const amount = fileUnit === null ? readNumber(text) : readQuantity(text, fileUnit, shownAs(measure, units).unit ?? fileUnit);
  if (typeof amount !== "number") return { ok: false, fault: { code: "unreadable", fault: amount } };
  if (measure === "count" && !Number.isInteger(amount)) return { ok: false, fault: { code: "not-whole" } };
  return isWithin(amount, bounds) ? { ok: true, value: amount } : { ok: false, fault: { code: "out-of-bounds", bounds } };
}

function readQuantity(text: string, fileUnit: Unit, defaultUnit: Unit): number | QuantityFault {
  const kind: QuantityKind = UNITS[fileUnit].kind;
  const read = parseQuantity(text, { kind, defaultUnit: defaultUnit as UnitOf<typeof kind> });
  return read.ok ? inUnit(read.amount, read.unit, fileUnit) : read;
}

/** A bare number is read as degrees would be, but may carry no unit. */
function readNumber(text: string): number | Pick<QuantityFault, "code" | "params"> {
  const unit = /[^\d\s.,+\-\u2212\u2013/½¼¾⅛⅜⅝⅞]+/.exec(text);
  if (unit && /\d/.test(text)) return { code: "quantity.unexpected", params: { found: unit[0] } };
  const read = parseQuantity(text, { kind: "angle", defaultUnit: "deg" });
  return read.ok ? read.amount : read;
}

/** A value of the case file as text for a field, in the unit shown beside it. */
export function measureText(value: number, measure: Measure, units: Units, decimalSign: "." | ","): string {
  const fileUnit = FILE_UNITS[measure];
  const { unit, decimals } = shownAs(measure, units);
  const shown = fileUnit === null || unit === null ? value : inUnit(value, fileUnit, unit);
  return String(Number(shown.toFixed(decimals)) + 0).replace(".", decimalSign);
}
