import { toSi } from "@halfturn/engine/units";
import type { Case } from "../schema/case.js";

/** Drivers read a speedometer and remember it to about this share (common practice, no source). */
const REMEMBERED = 0.1;
/** The speeds of the complaint in m/s, widened by what a driver's word is worth; null where it names none. */
export function complaintRange({ complaint }: Case): { readonly slowest: number; readonly fastest: number } | null {
  const [from, to] = complaint?.speedKmh ?? [0, 0];
  if (!(from > 0 && to > 0)) return null;
  return { slowest: toSi(from, "km/h") * (1 - REMEMBERED), fastest: toSi(to, "km/h") * (1 + REMEMBERED) };
}
