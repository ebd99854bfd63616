import { type Metres, metres } from "../units/index.js";

const MILLIMETRES_PER_INCH = 25.4;

/** What a tyre's size designation says about its size when new. */
export interface TyreSize {
  readonly construction: "radial" | "bias";
  /** Overall diameter of the new, unloaded tyre. */
  readonly overallDiameter: Metres;
  /** How the diameter was found: by the designation's own arithmetic, or from a table because the designation does not hold it. */
  readonly from: "section-and-aspect" | "stated-diameter" | "table";
}

export type TyreSizeResult =
  | { readonly ok: true; readonly tyre: TyreSize }
  | { readonly ok: false; readonly code: "tyre.unreadable" | "tyre.not-in-table" };

/** Metric (also with P, LT, ST or C): 265/70R17, LT245/75R16C, 315/80R22.5. Groups: section, aspect, construction, rim code. */
const METRIC = /^(?:P|LT|ST|T)?\s*(\d{3})\s*\/\s*(\d{2,3})\s*(ZR|R|-|D|B)\s*(\d{2}(?:\.5)?)\s*(?:LT|C|[A-N])?$/i;
/** Flotation: 35x12.50R17LT. The first number is the overall diameter in inches. */
const FLOTATION = /^(\d{2}(?:\.\d+)?)\s*[x*]\s*(\d{1,2}(?:\.\d+)?)\s*(ZR|R|-|D|B)\s*(\d{2}(?:\.5)?)\s*(?:LT|C|[A-N])?$/i;
/** Truck code sizes without an aspect: 11R22.5. */
const CODE = /^(\d{1,2}(?:\.\d+)?)\s*(R|-)\s*(\d{2}(?:\.5)?)\s*(?:LT|C|[A-N])?$/i;

/** Overall diameters in mm of code sizes: midpoints of the ETRTO and TRA figures, from memory. */
const CODE_SIZES: Readonly<Record<string, number>> = { "11R22.5": 1052, "12R22.5": 1084.5 };

const half = (value: number): number => Math.floor(value + 0.5);
const construction = (letter: string): TyreSize["construction"] => (/r/i.test(letter) ? "radial" : "bias");

/**
 * Reads a size designation as it is moulded on the sidewall. The load and speed marks behind it (`121/118S`) may follow and are passed over.
 * Metric sizes: section height H = section x aspect / 100 rounded to the millimetre, D = rim + 2 H, D rounded too; a rim code is in inches
 * (ISO 4000-1 and ETRTO, from memory; half millimetres round up).
 */
export function readTyreSize(designation: string): TyreSizeResult {
  const text = designation.trim().replace(/\s+\d{2,3}(?:\/\d{2,3})?\s*[A-Z]$/i, "");
  const metric = METRIC.exec(text);
  if (metric) {
    const [, section, aspect, letter, rim] = metric as unknown as [string, string, string, string, string];
    const height = half((Number(section) * Number(aspect)) / 100);
    const diameter = half(Number(rim) * MILLIMETRES_PER_INCH + 2 * height);
    return tyre(construction(letter), diameter, "section-and-aspect");
  }
  const flotation = FLOTATION.exec(text);
  if (flotation) {
    const [, diameter, , letter] = flotation as unknown as [string, string, string, string];
    return tyre(construction(letter), Number(diameter) * MILLIMETRES_PER_INCH, "stated-diameter");
  }
  const code = CODE.exec(text);
  if (code) {
    const [, width, letter, rim] = code as unknown as [string, string, string, string];
    const known = CODE_SIZES[`${width}${letter.toUpperCase()}${rim}`];
    return known === undefined ? { ok: false, code: "tyre.not-in-table" } : tyre(construction(letter), known, "table");
  }
  return { ok: false, code: "tyre.unreadable" };
}

const tyre = (kind: TyreSize["construction"], millimetres: number, from: TyreSize["from"]): TyreSizeResult => ({
  ok: true,
  tyre: { construction: kind, overallDiameter: metres(millimetres / 1000), from },
});
