import { degreesToRadians } from "../units/index.js";
import type { AbsoluteReading, DifferenceReading, Gauge, Gauging, ZeroCheckReading } from "./gauging.js";
import type { ErrorSource } from "./pose-model.js";

/**
 * One linear equation between what was read and what is unknown.
 * row . unknowns + errors = value, all in radians; the unknowns are the inclinations of the shafts in power order, the gauge's zero, then the
 * slope of each spot of the turn-round check.
 */
export type Observation = {
  readonly row: readonly number[];
  readonly value: number;
  /** Independent errors that add up in this equation. */
  readonly sources: readonly ErrorSource[];
  /** Their root sum of squares, never below `LEAST_U`. */
  readonly u: number;
  readonly path: string;
} & (
  | { readonly kind: "absolute"; readonly reading: AbsoluteReading }
  | { readonly kind: "difference"; readonly reading: DifferenceReading }
  | { readonly kind: "zero-check"; readonly reading: ZeroCheckReading }
  | { readonly kind: "zero-prior" }
  | { readonly kind: "level-prior" }
);

/** Weights stay finite for a gauge that claims to be perfect; far below anything a gauge can show. */
export const LEAST_U = degreesToRadians(1e-6);

const RECTANGULAR_HALF_WIDTH = Math.sqrt(3);

/** A rectangular error source by its half width, in radians. */
export const rectangularSource = (
  path: string,
  of: string,
  halfWidth: number,
  origin: ErrorSource["origin"] = "measured",
): ErrorSource => ({
  path,
  of,
  shape: "rectangular",
  u: halfWidth / RECTANGULAR_HALF_WIDTH,
  origin,
});

/** Root sum of squares of independent sources, kept from nought. */
export const totalU = (sources: readonly ErrorSource[]): number => Math.max(LEAST_U, Math.hypot(...sources.map(({ u }) => u)));

/** Each placing of the gauge adds an accuracy error of its own, unless it is one and the same for all and so part of the zero. */
function readingSources(gauge: Gauge, path: string, of: string, placings: number): readonly ErrorSource[] {
  const accuracy = gauge.common ? [] : Array.from({ length: placings }, () => rectangularSource(path, of, gauge.accuracy));
  return [...accuracy, rectangularSource(path, of, gauge.resolution / 2)];
}

function rowOf(width: number, entries: readonly (readonly [number, number])[]): readonly number[] {
  const row = new Array<number>(width).fill(0);
  for (const [place, by] of entries) row[place] = (row[place] ?? 0) + by;
  return row;
}

/** Place of the gauge's zero among the unknowns. */
export const zeroIndex = (shafts: readonly string[]): number => shafts.length;

/** The equations of every reading and every turn-round reading of a gauging, readings first. Throws RangeError for a shaft the driveline does not have. */
export function observationsOf(gauging: Gauging, shafts: readonly string[]): readonly Observation[] {
  const { gauge } = gauging;
  const zero = zeroIndex(shafts);
  const width = zero + 1 + Math.ceil(gauge.zeroCheck.length / 2);
  const shaft = (id: string): number => {
    const index = shafts.indexOf(id);
    if (index < 0) throw new RangeError(`no shaft ${id} in this driveline`);
    return index;
  };
  const readings = gauging.readings.map((reading): Observation => {
    if (reading.kind === "difference") {
      const sources = readingSources(gauge, reading.path, reading.to, 2);
      const row = rowOf(width, [
        [shaft(reading.to), 1],
        [shaft(reading.from), -1],
      ]);
      return { kind: "difference", reading, row, value: reading.inclination, sources, u: totalU(sources), path: reading.path };
    }
    const sources = readingSources(gauge, reading.path, reading.shaft, 1);
    const row = rowOf(width, [
      [shaft(reading.shaft), 1],
      [zero, reading.zeroSign],
    ]);
    return { kind: "absolute", reading, row, value: reading.inclination, sources, u: totalU(sources), path: reading.path };
  });
  const checks = gauge.zeroCheck.map((reading, k): Observation => {
    const sources = readingSources(gauge, reading.path, "zero", 1);
    const slope = k % 2 === 0 ? 1 : -1;
    const row = rowOf(width, [
      [zero, 1],
      [zero + 1 + Math.floor(k / 2), slope],
    ]);
    return { kind: "zero-check", reading, row, value: reading.value, sources, u: totalU(sources), path: reading.path };
  });
  return [...readings, ...checks];
}
