import type { Deviates } from "@halfturn/engine/uncertainty";
import { degreesToRadians } from "@halfturn/engine/units";
import type { Layout, Spot } from "./layouts.js";
import { type Placing, readSpot, type Truth } from "./simulate-gauging.js";

/** The slips that the readings must betray. */
export const SLIPS = ["lower end", "side", "rows swapped", "rust", "not zeroed"] as const;
export type SlipName = (typeof SLIPS)[number];

const RUST = degreesToRadians(0.5);
/** A zero that makes the side matter. */
const SLIP_ZERO = degreesToRadians(0.3);

const indicesWhere = (layout: Layout, holds: (spot: Spot) => boolean): readonly number[] =>
  layout.spots.flatMap((spot, k) => (holds(spot) ? [k] : []));

const oneOf = <T>(items: readonly T[], uniform: Deviates): T => items[Math.floor(uniform() * items.length)] as T;

const isTubeEnd = (spot: Spot): boolean => spot.kind === "absolute" && spot.place !== "face";

/** Which readings a slip of this kind falls on, drawn at random; null where the layout has none. The side slip needs a checked zero. */
export function drawVictims(slip: SlipName, layout: Layout, uniform: Deviates): readonly number[] | null {
  const pick = (candidates: readonly number[]): readonly number[] | null => (candidates.length === 0 ? null : [oneOf(candidates, uniform)]);
  switch (slip) {
    case "lower end":
      return pick(indicesWhere(layout, () => true));
    case "side":
      return layout.zeroChecks === 0 ? null : pick(indicesWhere(layout, ({ kind }) => kind === "absolute"));
    case "rust":
      return pick(indicesWhere(layout, isTubeEnd));
    case "not zeroed":
      return pick(indicesWhere(layout, ({ kind }) => kind === "difference"));
    case "rows swapped": {
      const absolute = indicesWhere(layout, ({ kind }) => kind === "absolute");
      const first = oneOf(absolute, uniform);
      const shaftOf = (k: number): string => (layout.spots[k] as Spot & { kind: "absolute" }).shaft;
      return [
        first,
        oneOf(
          absolute.filter((k) => shaftOf(k) !== shaftOf(first)),
          uniform,
        ),
      ];
    }
  }
}

/** The truth under which a slip is tried. */
export const truthFor = (slip: SlipName, truth: Truth): Truth =>
  slip === "side" ? { ...truth, zero: Math.sign(truth.zero || 1) * SLIP_ZERO } : truth;

/** What is written down when the slip happens. `sign`: which way the rust tips the gauge. */
export function readWithSlip(
  slip: SlipName,
  layout: Layout,
  victims: readonly number[],
  truth: Truth,
  placing: Placing,
  sign: number,
): readonly number[] {
  const read = (spot: Spot): number => readSpot(spot, truth, placing);
  const clean = layout.spots.map(read);
  const [a, b] = victims as readonly [number, number | undefined];
  const spot = layout.spots[a] as Spot;
  const replaced = (value: number): readonly number[] => clean.map((was, k) => (k === a ? value : was));
  switch (slip) {
    case "lower end":
      return replaced(-(clean[a] as number));
    case "side":
      return replaced(read({ ...spot, zeroSign: -spot.zeroSign as 1 | -1 }));
    case "rust":
      return replaced(
        placing.round(
          placing.place(
            (truth.inclination[(spot as Spot & { kind: "absolute" }).shaft] as number) + spot.zeroSign * truth.zero + sign * RUST,
          ),
        ),
      );
    case "not zeroed":
      return replaced(
        read({ kind: "absolute", shaft: (spot as Spot & { kind: "difference" }).to, place: "along", zeroSign: spot.zeroSign }),
      );
    case "rows swapped":
      return clean.map((was, k) => (k === a ? (clean[b as number] as number) : k === b ? (clean[a] as number) : was));
  }
}
