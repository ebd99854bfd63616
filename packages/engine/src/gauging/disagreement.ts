import type { FindingCode, FindingParams } from "../findings/index.js";
import { type Radians, radiansToDegrees } from "../units/index.js";
import { CRITICAL_CONTRAST, LEAST_REDUNDANCY } from "./largest-contrast.js";
import { fitLinear } from "./linear-fit.js";
import type { Observation } from "./observation.js";

/** A direct comparison that a person can follow: this reading against that one, or against what the rest foretells. */
export interface Disagreement {
  readonly code: FindingCode;
  /** The reading that is compared. */
  readonly of: Observation;
  /** Degrees, and what was compared. */
  readonly params: FindingParams;
  /** Size of the difference in standard uncertainties. */
  readonly size: number;
}

interface Comparison {
  readonly code: FindingCode;
  /** How far what is compared goes with the target reading: a zero goes with half of it. */
  readonly share: number;
  readonly target: number;
  readonly members: readonly number[];
  readonly params: FindingParams;
}

const degrees = (value: number): number => radiansToDegrees(value as Radians);

function codeOfPair(a: Observation & { kind: "absolute" }, b: Observation & { kind: "absolute" }): FindingCode {
  if (a.reading.zeroSign !== b.reading.zeroSign) return "gauging.sides-disagree";
  const places = [a.reading.place, b.reading.place];
  const bothEnds = places.includes("source-end") && places.includes("driven-end");
  return bothEnds ? "gauging.tube-ends-disagree" : "gauging.repeats-disagree";
}

function pairParams(a: Observation & { kind: "absolute" }, b: Observation & { kind: "absolute" }): FindingParams {
  const atEnd = ({ reading }: typeof a): FindingParams => {
    if (reading.place === "source-end") return { sourceEndDeg: degrees(reading.inclination) };
    return reading.place === "driven-end" ? { drivenEndDeg: degrees(reading.inclination) } : {};
  };
  return {
    shaft: a.reading.shaft,
    firstDeg: degrees(a.value),
    secondDeg: degrees(b.value),
    ...atEnd(a),
    ...atEnd(b),
    readings: [a.path, b.path],
  };
}

const sharesSlope = (a: Observation, b: Observation): boolean => a.row.every((entry, k) => entry === 0 || (b.row[k] ?? 0) !== 0);

/** The comparisons that a list of observations offers: two readings of one shaft, a zeroed reading against its shafts, one pair of the turn-round check against the rest. */
function comparisonsIn(observations: readonly Observation[]): readonly Comparison[] {
  const indicesWhere = (holds: (observation: Observation) => boolean): readonly number[] =>
    observations.flatMap((observation, k) => (holds(observation) ? [k] : []));
  const checks = indicesWhere(({ kind }) => kind === "zero-check");
  const ofShaft = (id: string): readonly number[] => indicesWhere((o) => o.kind === "absolute" && o.reading.shaft === id);
  return observations.flatMap((a, i): readonly Comparison[] => {
    if (a.kind === "absolute") {
      return ofShaft(a.reading.shaft).flatMap((j): readonly Comparison[] => {
        const b = observations[j] as Observation;
        if (j <= i || b.kind !== "absolute") return [];
        return [{ code: codeOfPair(a, b), share: 1, target: i, members: [i, j, ...checks], params: pairParams(a, b) }];
      });
    }
    if (a.kind === "difference") {
      const { from, to } = a.reading;
      const params = { from, to, firstDeg: degrees(a.value), readings: [a.path] };
      return [
        { code: "gauging.difference-disagrees", share: 1, target: i, members: [i, ...ofShaft(from), ...ofShaft(to), ...checks], params },
      ];
    }
    if (a.kind === "zero-check") {
      const b = observations[i + 1];
      // Pairs are told by the slope they share; one that has lost its partner tells nothing.
      if (b?.kind !== "zero-check" || !sharesSlope(a, b)) return [];
      const params = { firstDeg: degrees((a.value + b.value) / 2), readings: [a.path, b.path] };
      return [{ code: "gauging.zero-check-disagrees", share: 0.5, target: i, members: checks, params }];
    }
    return [];
  });
}

/** Measures a comparison among its members, or among all observations where the members alone cannot tell; null where neither can. */
function measure(comparison: Comparison, observations: readonly Observation[]): Disagreement | null {
  const all = observations.map((_, k) => k);
  for (const members of [comparison.members, all]) {
    const at = members.indexOf(comparison.target);
    const fit = fitLinear(members.map((k) => observations[k] as Observation));
    const redundancy = fit.residualMaker[at]?.[at] ?? 0;
    if (redundancy < LEAST_REDUNDANCY) continue;
    const of = observations[comparison.target] as Observation;
    // The residual against what the others foretell, and the standard uncertainty of that difference.
    const difference = (comparison.share * of.u * (fit.residuals[at] ?? 0)) / redundancy;
    const u = (comparison.share * of.u) / Math.sqrt(redundancy);
    const measured = { differenceDeg: Math.abs(degrees(difference)), allowedDeg: degrees(CRITICAL_CONTRAST * u) };
    const { firstDeg, secondDeg = (firstDeg as number) - degrees(difference) } = comparison.params;
    return { code: comparison.code, of, params: { ...comparison.params, secondDeg, ...measured }, size: Math.abs(difference) / u };
  }
  return null;
}

/** Where no direct comparison tells: a reading against all others. */
const againstAll = (observations: readonly Observation[], target: number): Comparison => {
  const of = observations[target] as Observation;
  return {
    code: of.kind === "difference" ? "gauging.difference-disagrees" : "gauging.sides-disagree",
    share: 1,
    target,
    members: observations.map((_, k) => k),
    params: { ...(of.kind === "absolute" ? { shaft: of.reading.shaft } : {}), firstDeg: degrees(of.value), readings: [of.path] },
  };
};

const largest = (disagreements: readonly (Disagreement | null)[]): Disagreement | null =>
  disagreements.reduce((best, next) => (next !== null && (best === null || next.size > best.size) ? next : best), null);

/**
 * The comparison that shows a contradiction most plainly, of those that touch a suspect if any does.
 * Needs at least one observation that the others foretell; a suspect is not always one, beside a gauge much finer than the belief in its zero.
 */
export function plainestDisagreement(observations: readonly Observation[], suspects: readonly number[]): Disagreement {
  const isShaftReading = (k: number): boolean => observations[k]?.kind !== "zero-check";
  const all = comparisonsIn(observations);
  const touching = all.filter(
    ({ target, members }) => suspects.includes(target) || members.some((k) => suspects.includes(k) && isShaftReading(k)),
  );
  const measured = (comparisons: readonly Comparison[]) => largest(comparisons.map((comparison) => measure(comparison, observations)));
  const generic = (targets: readonly number[]) => measured(targets.map((target) => againstAll(observations, target)));
  const plainest = measured(touching) ?? measured(all) ?? generic(suspects) ?? generic(observations.map((_, k) => k));
  if (!plainest) throw new RangeError("no observation can be compared with the others");
  return plainest;
}
