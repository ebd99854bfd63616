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

/** Steeper than any shaft lies: the gauge stood on a face across it, or shows degrees from level on one. */
const UPRIGHT_FROM_DEG = 60;

export const isUpright = (deg: number): boolean => deg >= UPRIGHT_FROM_DEG;

/** The decimals that were typed, so that 90 - 87.6 is 2.4 and not 2.4000000000000057. */
const HUNDREDTHS_OF_ANY_DISPLAY = 1e6;

/** Degrees off plumb of a display that counts from level. */
export const offPlumb = (deg: number): number => Math.round((90 - deg) * HUNDREDTHS_OF_ANY_DISPLAY) / HUNDREDTHS_OF_ANY_DISPLAY;
