import type { Case } from "../schema/case.js";
import { turningAt } from "./turning-at.js";

/** Where each order runs over the speeds of the complaint, Hz. */
export interface ComplaintReach {
  readonly speedKmh: readonly [from: number, to: number];
  readonly range: (part: string, order: number) => readonly [from: number, to: number];
}

/** null where the complaint names no speed. The gear is the one that the orders were asked in. */
export function complaintReach(document: Case, gear: string | null): ComplaintReach | null {
  const [from, to] = document.complaint?.speedKmh ?? [0, 0];
  if (to <= 0) return null;
  const [low, high] = [ratesAt(document, gear, from), ratesAt(document, gear, to)];
  return { speedKmh: [from, to], range: (part, order) => [order * (low.get(part) ?? 0), order * (high.get(part) ?? 0)] };
}

/** Turns per second of each part; at a standstill none turns. */
function ratesAt(document: Case, gear: string | null, speed: number): ReadonlyMap<string, number> {
  const turning = speed > 0 ? turningAt(document, { speed, gear: gear ?? undefined, turns: 1 }) : null;
  return new Map(turning?.ok ? turning.json.parts.map(({ part, turnsPerSecond }) => [part, turnsPerSecond?.value ?? 0]) : []);
}
