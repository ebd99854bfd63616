import type { Finding } from "../findings/index.js";
import type { ShaftPose } from "../geometry/index.js";
import { type Driveline, shaftIds } from "../kinematics/driveline.js";
import type { Radians } from "../units/index.js";
import { findContradictions } from "./find-contradictions.js";
import type { Gauging } from "./gauging.js";
import { type HeadingEstimate, headingOf } from "./heading-of.js";
import { levelFinding, looseGroupFindings, shaftsWithoutLevel, withAssumedLevel } from "./level-prior.js";
import { fitLinear } from "./linear-fit.js";
import { lowerEndFinding } from "./lower-end-finding.js";
import { type Observation, observationsOf } from "./observation.js";
import type { ErrorSource, PoseModel } from "./pose-model.js";
import { standingFindings } from "./standing-findings.js";
import { noCheckFinding, uncheckedShafts } from "./unchecked-shafts.js";
import { zeroFindings } from "./zero-findings.js";
import { withAssumedZero } from "./zero-prior.js";

/** Inclinations and the law of their errors, before the headings join. */
interface Inclinations {
  readonly inclination: readonly (Radians | null)[];
  readonly sources: readonly ErrorSource[];
  readonly by: readonly (readonly number[])[];
}

function estimateInclinations(kept: readonly Observation[], gauging: Gauging, shafts: readonly string[]): Inclinations {
  if (kept.length === 0) return { inclination: shafts.map(() => null), sources: [], by: shafts.map(() => []) };
  const observations = withAssumedLevel(withAssumedZero(kept, gauging, shafts), gauging, shafts);
  const fit = fitLinear(observations);
  return {
    inclination: shafts.map((_, s) => (fit.known[s] ? ((fit.estimate[s] ?? 0) as Radians) : null)),
    sources: observations.flatMap(({ sources }) => sources),
    by: shafts.map((_, s) => observations.flatMap(({ sources }, i) => sources.map(() => (fit.known[s] ? (fit.gain[s]?.[i] ?? 0) : 0)))),
  };
}

/** Puts the headings' sources behind those of the inclinations. */
function joined(shafts: readonly string[], inclinations: Inclinations, headings: readonly HeadingEstimate[]): Omit<PoseModel, "findings"> {
  const rest = headings.flatMap(({ sources }) => sources);
  return {
    shafts,
    inclination: inclinations.inclination,
    heading: headings.map(({ heading }) => heading),
    sources: [...inclinations.sources, ...rest],
    inclinationBy: inclinations.by.map((row) => [...row, ...rest.map(() => 0)]),
    headingBy: headings.map((own, s) => [
      ...(inclinations.by[s] ?? []).map((by) => own.byInclination * by),
      ...headings.flatMap((heading) => heading.by.map((by) => (heading === own ? by : 0))),
    ]),
  };
}

const notRead = (shaft: string, path: string): Finding => ({
  code: "gauging.shaft-not-read",
  severity: "warn",
  path,
  params: { shaft, read: shaft === "source" || shaft === "driven" ? shaft : `${shaft}:source-end` },
});

function readingFindings(kept: readonly Observation[], gauging: Gauging, model: Omit<PoseModel, "findings">): readonly Finding[] {
  const { shafts } = model;
  const unknown = shafts.filter((_, s) => model.inclination[s] === null);
  if (kept.length === 0) return [];
  const level = shaftsWithoutLevel(withAssumedZero(kept, gauging, shafts), shafts);
  const poses = shafts.map((_, s): ShaftPose | null => {
    const inclination = model.inclination[s] ?? null;
    // Which end is lower cannot be asked of a shaft that was not read against gravity.
    return inclination === null || level.includes(s) ? null : { inclination, heading: model.heading[s] as Radians };
  });
  const unchecked = uncheckedShafts(kept, gauging, shafts).filter(({ shaft }) => !unknown.includes(shaft));
  const loose = looseGroupFindings(kept, shafts, unknown, gauging);
  const inGroups = loose.flatMap(({ params }) => params.shafts as readonly string[]);
  return [
    ...unknown.filter((shaft) => !inGroups.includes(shaft)).map((shaft) => notRead(shaft, gauging.path)),
    ...loose,
    ...levelFinding(level, shafts, gauging),
    ...zeroFindings(kept, gauging, shafts),
    ...unchecked.map(noCheckFinding),
    ...unchecked.flatMap((shaft) => lowerEndFinding(shaft, shafts, poses)),
  ];
}

const headingFindings = (shafts: readonly string[], headings: readonly HeadingEstimate[], path: string): readonly Finding[] => {
  const unmeasured = shafts.filter((_, s) => !headings[s]?.measured);
  return unmeasured.length === 0 ? [] : [{ code: "gauging.heading-not-measured", severity: "note", path, params: { shafts: unmeasured } }];
};

/**
 * How the shafts lie, fused from everything read on one visit: weighted least squares over all readings, with the law of their errors.
 * reading = inclination + zeroSign zero + accuracy error + rounding; a difference has two placings and no zero. All in radians, chain frame.
 * Readings that contradict the others are set aside where the data decide, else the finding is a stop; nothing is left out silently.
 * Exact readings give the shafts exactly: the zero is estimated where the readings tell it, and taken as 0 (with an error source) where they do not.
 * Shafts read against one another only are level on average, give or take `ASSUMED_LEVEL`, which leaves the angles between them as read.
 * A shaft that neither a reading nor a chain of differences reaches has inclination null. Throws RangeError for a reading of a shaft not in the driveline.
 * Sources: weighted least squares and its covariance, JCGM 102:2011; slips, W. Baarda 1968 (from memory).
 */
export function fuseGauging(gauging: Gauging, driveline: Driveline): PoseModel {
  const shafts = shaftIds(driveline);
  const stranger = gauging.headings.find(({ shaft }) => !shafts.includes(shaft));
  if (stranger) throw new RangeError(`no shaft ${stranger.shaft} in this driveline`);
  const observations = gauging.readings.length === 0 ? [] : observationsOf(gauging, shafts);
  const { kept, findings } = findContradictions(observations, gauging, shafts);
  const inclinations = estimateInclinations(kept, gauging, shafts);
  const headings = shafts.map((shaft, s) => headingOf(shaft, inclinations.inclination[s] ?? 0, gauging));
  const model = joined(shafts, inclinations, headings);
  const nothing: readonly Finding[] =
    gauging.readings.length === 0 ? [{ code: "gauging.nothing-read", severity: "stop", path: gauging.path, params: {} }] : [];
  return {
    ...model,
    findings: [
      ...standingFindings(gauging),
      ...nothing,
      ...findings,
      ...readingFindings(kept, gauging, model),
      ...headingFindings(shafts, headings, gauging.path),
    ],
  };
}
