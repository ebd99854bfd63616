import { SHORTEST_MM } from "@halfturn/casefile";
import type { Bounds } from "../../measure/read-measure.js";

const LONGEST_MM = 20_000;

/** What the case file takes, in its own units. */
export const BOUNDS = {
  /** A distance between things that are hand-breadths apart at least. */
  distance: { minimum: SHORTEST_MM, maximum: LONGEST_MM },
  /** Something that has a size. */
  size: { above: 0, maximum: LONGEST_MM },
  length: { minimum: 0, maximum: LONGEST_MM },
  offset: { minimum: -LONGEST_MM, maximum: LONGEST_MM },
  ratio: { above: 0, maximum: 100 },
  cylinders: { minimum: 1, maximum: 24 },
  shaftSpeed: { above: 0, maximum: 20_000 },
  slipShare: { minimum: 0, below: 1 },
  statedAngle: { above: 0, below: 90 },
  magnitude: { minimum: 0, below: 90 },
  leaning: { above: -90, below: 90 },
  phasing: { minimum: -180, maximum: 180 },
  pitchRate: { minimum: 0, maximum: 10 },
  acceleration: { above: 0, maximum: 1e6 },
} as const satisfies Readonly<Record<string, Bounds>>;

/** Narrower by another number of the case, where that is known. */
export const atLeast = (bounds: Bounds, other: number | null | undefined): Bounds =>
  other === null || other === undefined ? bounds : { ...bounds, minimum: Math.max(other, bounds.minimum ?? other) };
export const atMost = (bounds: Bounds, other: number | null | undefined): Bounds =>
  other === null || other === undefined ? bounds : { ...bounds, maximum: Math.min(other, bounds.maximum ?? other) };
export const below = (bounds: Bounds, other: number | null | undefined): Bounds =>
  other === null || other === undefined ? bounds : { ...bounds, below: Math.min(other, bounds.below ?? other) };
