import type { Finding, FindingCode, FindingParams, Severity } from "../findings/index.js";
import type { LimitSet } from "../limits/index.js";
import type { Radians } from "../units/index.js";
import { radiansToDegrees } from "../units/index.js";
import { quantityIndex } from "./chain-quantities.js";
import type { CancellationResult, JointResult, MotionResult, Sensitivity } from "./driveline-analysis.js";
import type { Estimate } from "./estimate.js";

const degrees = (angle: number): number => radiansToDegrees(angle as Radians);

const interval = (estimate: Estimate): FindingParams => ({ lowDeg: degrees(estimate.low), highDeg: degrees(estimate.high) });

const make = (code: FindingCode, severity: Severity, path: string, params: FindingParams): Finding => ({ code, severity, path, params });

/** What the readings say again about: the largest contribution, in the finding's params. */
const repeat = (sensitivity: readonly Sensitivity[]): FindingParams => {
  const [first] = sensitivity;
  return first ? { repeat: first.of, repeatPath: first.path, repeatShare: first.share } : {};
};

/** Joints over, under or uncertain. */
export function jointFindings(
  joints: readonly JointResult[],
  sensitivity: (joint: number) => readonly Sensitivity[],
  path: string,
): readonly Finding[] {
  return joints.flatMap(({ id, operatingAngle, maximum, minimum, verdict }, k) => {
    if (!operatingAngle || verdict === "within" || verdict === "not-gauged" || verdict === "withheld") return [];
    const params = {
      joint: id,
      angleDeg: degrees(operatingAngle.value),
      ...interval(operatingAngle),
      maximumDeg: degrees(maximum),
      minimumDeg: degrees(minimum),
    };
    const place = `${path}.joints[${k}]`;
    if (verdict === "uncertain") return [make("joint.uncertain", "note", place, { ...params, ...repeat(sensitivity(k)) })];
    return [make(`joint.${verdict}`, "warn", place, params)];
  });
}

/** Cancellation over or uncertain, and where the bench rule would have said otherwise. */
export function cancellationFindings(
  { equivalentAngle, equivalentMaximum, verdict, benchResidual, benchVerdict }: CancellationResult,
  sensitivity: readonly Sensitivity[],
  path: string,
): readonly Finding[] {
  if (!equivalentAngle) return [];
  const params = { equivalentDeg: degrees(equivalentAngle.value), ...interval(equivalentAngle), maximumDeg: degrees(equivalentMaximum) };
  const findings: Finding[] = [];
  if (verdict === "over") findings.push(make("cancellation.over", "warn", path, params));
  if (verdict === "uncertain") findings.push(make("cancellation.uncertain", "note", path, { ...params, ...repeat(sensitivity) }));
  if (benchResidual && benchVerdict) {
    const benchPasses = benchVerdict !== "exceeded";
    const exactPasses = equivalentAngle.value <= equivalentMaximum;
    if (benchPasses !== exactPasses) {
      findings.push(
        make("cancellation.bench-disagrees", benchPasses ? "warn" : "note", path, { ...params, benchDeg: degrees(benchResidual.value) }),
      );
    }
  }
  return findings;
}

/** One acceleration to be judged at the highest speed, and what to call it when it is too much. */
export interface AccelerationJudgement {
  readonly estimate: Estimate | null;
  readonly limit: number;
  readonly code: FindingCode;
  readonly section?: string;
  /** Place of the motion among the quantities of the chain, to ask which reading it rests on. */
  readonly place: number;
}

/** The accelerations that a verdict rests on, at the highest speed: driven end, and every section in drive and on coast. */
export function judgements(motion: Omit<MotionResult, "verdict">, limits: LimitSet): readonly AccelerationJudgement[] {
  const top = motion.speeds[motion.speeds.length - 1];
  if (!top) return [];
  const index = quantityIndex(top.drive.length + 1);
  return [
    { estimate: top.drivenAcceleration, limit: limits.drivenAccelerationOver.value, code: "motion.driven-over", place: index.whole },
    ...top.drive.map(({ section, acceleration }, s) => ({
      estimate: acceleration,
      limit: limits.inertiaDrive.value,
      code: "motion.drive-inertia-over" as const,
      section,
      place: index.drive(s),
    })),
    ...top.coast.map(({ section, acceleration }, s) => ({
      estimate: acceleration,
      limit: limits.inertiaCoast.value,
      code: "motion.coast-inertia-over" as const,
      section,
      place: index.coast(s),
    })),
  ];
}

/** Accelerations over their limits, past the warning, or uncertain. sensitivity: of the quantity of the chain at a place. */
export function motionFindings(
  motion: Omit<MotionResult, "verdict">,
  limits: LimitSet,
  sensitivity: (place: number) => readonly Sensitivity[],
  path: string,
): readonly Finding[] {
  const top = motion.speeds[motion.speeds.length - 1];
  if (!top) return [];
  const params = (estimate: Estimate, limit: number, section?: string): FindingParams => ({
    accelerationRadS2: estimate.value,
    lowRadS2: estimate.low,
    highRadS2: estimate.high,
    limitRadS2: limit,
    shaftRpm: top.shaftSpeed,
    ...(section === undefined ? {} : { section }),
  });
  const findings: Finding[] = [];
  for (const { estimate, limit, code, section, place } of judgements(motion, limits)) {
    if (!estimate) continue;
    if (estimate.low > limit) findings.push(make(code, "warn", path, params(estimate, limit, section)));
    else if (estimate.high > limit) {
      findings.push(
        make("motion.uncertain", "note", path, { ...params(estimate, limit, section), of: code, ...repeat(sensitivity(place)) }),
      );
    }
  }
  const driven = top.drivenAcceleration;
  const warning = limits.drivenAccelerationWarn.value;
  if (driven && driven.low <= limits.drivenAccelerationOver.value && driven.value > warning) {
    findings.push(make("motion.driven-high", "warn", path, params(driven, warning)));
  }
  return findings;
}
