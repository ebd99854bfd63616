import { type CaseHeading, SHORTEST_MM, type VehicleSide } from "@halfturn/casefile";
import { formatQuantity, type Metres, parseQuantity } from "@halfturn/engine/units";
import type { Units } from "../../../device/settings.js";

const UNIT = { metric: "mm", us: "in" } as const;
const MILLIMETRES = 1000;
/** Finer than any tape; it takes off what the way to metres and back adds. */
const FINEST_PER_MM = 100;

export const lengthUnit = (units: Units): "mm" | "in" => UNIT[units];

/** Millimetres of the case as this device shows them: to a tenth of a millimetre or a hundredth of an inch. */
export const lengthText = (mm: number, units: Units, decimalSign: "." | ",", withUnit = true): string =>
  formatQuantity((mm / MILLIMETRES) as Metres, {
    kind: "length",
    unit: UNIT[units],
    decimals: decimalsOf(mm, units),
    decimalSign,
    withUnit,
  });

const decimalsOf = (mm: number, units: Units): number => (units === "us" ? 2 : Number.isInteger(mm) ? 0 : 1);

export interface TapeTexts {
  readonly shaft: string;
  readonly lateral: string;
  readonly over: string;
  /** Toward which side of the vehicle the driven end lies; null only where it lies straight. */
  readonly toward: VehicleSide | null;
}

export type TypedHeading =
  | { readonly ok: true; readonly heading: CaseHeading }
  | { readonly ok: false; readonly fault: "lateral" | "over" | "toward" | "too-wide" };

/** A sideways offset and its length as typed: "12", "1 1/8", "30 cm"; a text without a unit is in the unit of the device. */
export function typedHeading({ shaft, lateral, over, toward }: TapeTexts, units: Units): TypedHeading {
  const lateralMm = millimetres(lateral, units);
  if (lateralMm === null) return { ok: false, fault: "lateral" };
  const overMm = millimetres(over, units);
  if (overMm === null || overMm < SHORTEST_MM) return { ok: false, fault: "over" };
  if (lateralMm >= overMm) return { ok: false, fault: "too-wide" };
  if (lateralMm === 0) return { ok: true, heading: { of: shaft, lateralMm, overMm } };
  return toward === null ? { ok: false, fault: "toward" } : { ok: true, heading: { of: shaft, lateralMm, toward, overMm } };
}

function millimetres(text: string, units: Units): number | null {
  const parsed = parseQuantity(text, { kind: "length", defaultUnit: UNIT[units] });
  if (!parsed.ok || parsed.value < 0) return null;
  return Math.round(parsed.value * MILLIMETRES * FINEST_PER_MM) / FINEST_PER_MM;
}
