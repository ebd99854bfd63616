import { parseQuantity, radiansToDegrees } from "@halfturn/engine/units";

/** What was typed for an angle: its size in degrees, or why it is none. The text itself is kept either way. */
export type TypedAngle =
  | { readonly ok: true; readonly deg: number }
  | { readonly ok: false; readonly fault: "empty" | "signed" | "not-a-number" | "too-steep" };

/** Reads what stands in the readout. A sign is refused: which end is lower is chosen, never typed. */
export function typedAngle(text: string): TypedAngle {
  const parsed = parseQuantity(text, { kind: "angle", defaultUnit: "deg" });
  if (!parsed.ok) return { ok: false, fault: parsed.code === "quantity.empty" ? "empty" : "not-a-number" };
  const deg = parsed.unit === "deg" ? parsed.amount : radiansToDegrees(parsed.value);
  if (deg < 0 || /^\s*[-+\u2212\u2013]/.test(text)) return { ok: false, fault: "signed" };
  // A gauge on a square face may show exactly 90: that is plumb, and the page asks.
  return deg <= 90 ? { ok: true, deg } : { ok: false, fault: "too-steep" };
}

/** Why a number is asked about: upright, as on a face counted from level; steep, as a decimal sign that was missed. */
export type Doubt = "upright" | "steep";

/** Steeper than any shaft lies (common practice, no source). */
const UPRIGHT_FROM_DEG = 60;
/** Steeper than shafts of road vehicles lie (common practice, no source). */
const STEEP_FROM_DEG = 30;

export function doubtOf(deg: number): Doubt | null {
  if (deg >= UPRIGHT_FROM_DEG) return "upright";
  return deg >= STEEP_FROM_DEG ? "steep" : null;
}

/** What a whole number was meant to be, if its decimal sign was missed; null for one that has decimals. */
export const withSignPut = (deg: number): number | null => (Number.isInteger(deg) ? deg / 10 : null);

/** The decimals that were typed, so that 90 - 87.6 is 2.4 and not 2.4000000000000057. */
const HUNDREDTHS_OF_ANY_DISPLAY = 1e6;

/** Degrees off plumb of a display that counts from level. */
export const offPlumb = (deg: number): number => Math.round((90 - deg) * HUNDREDTHS_OF_ANY_DISPLAY) / HUNDREDTHS_OF_ANY_DISPLAY;
