import type { Finding } from "../findings/index.js";
import type { PoseModel } from "../gauging/index.js";
import { bestPhasing, type Driveline, type Joint } from "../kinematics/index.js";
import { type LimitSet, maximumOperatingAngle } from "../limits/index.js";
import { type Rpm, rpm, rpmToRadiansPerSecond } from "../units/index.js";
import { chainEstimates, estimateOf } from "./chain-estimates.js";
import { quantityIndex } from "./chain-quantities.js";
import type { CancellationResult, DrivelineAnalysis, JointResult, MotionResult } from "./driveline-analysis.js";
import { betterPhasingFindings } from "./driveline-findings.js";
import type { Verdict } from "./estimate.js";
import { cancellationFindings, jointFindings, judgements, motionFindings } from "./limit-findings.js";
import { motionResult } from "./motion-result.js";
import { bestPoses } from "./pose-draws.js";
import { poseEstimates } from "./pose-estimates.js";
import { sensitivityOf } from "./sensitivity.js";
import { benchVerdict, estimateVerdict, worstVerdict } from "./verdict.js";

/** Taken when a case does not say how fast its shaft turns. Common practice, no source; a finding says that it was assumed. */
export const ASSUMED_SPEED: Rpm = rpm(3000);

/** Poses of a driveline, as read or as predicted, and what to judge them by. */
export interface PosesToJudge {
  readonly driveline: Driveline;
  readonly poses: PoseModel;
  readonly limits: LimitSet;
  /** Highest propeller-shaft speed in use; null = not given, `ASSUMED_SPEED` is taken. */
  readonly maxShaftSpeed: Rpm | null;
  readonly draws: number;
  readonly seed: number;
  /** The numbers are not road angles: every verdict is withheld, and nothing is held against the limits. */
  readonly withheld: boolean;
  /** Place of the driveline in the case file, for findings. */
  readonly path: string;
}

/**
 * From the poses of one driveline with their error law to its joint angles, what they leave uncancelled, and the motion that comes of it,
 * each with its uncertainty and a verdict. Findings are those of limits and phasing alone. Angles in radians, accelerations in rad/s2.
 */
export function analysePoses(input: PosesToJudge): DrivelineAnalysis {
  const { driveline, poses: model, limits, withheld, path } = input;
  const index = quantityIndex(driveline.joints.length);
  const highest = input.maxShaftSpeed ?? ASSUMED_SPEED;
  const beyond = (joint: Joint, angle: number) =>
    joint.kind === "flexible" && angle > (joint.statedAngle ?? limits.jointAngle.flexible.value);
  const chain = chainEstimates(driveline, model, { draws: input.draws, seed: input.seed, beyond });
  const verdict = (word: Verdict): Verdict => (withheld && word !== "not-gauged" ? "withheld" : word);

  const joints = driveline.joints.map((joint, k): JointResult => {
    const operatingAngle = estimateOf(chain.joints[k] ?? null, (angle) => angle);
    const maximum = maximumOperatingAngle(joint, rpmToRadiansPerSecond(highest), limits);
    const minimum = limits.minimumAngle[joint.kind].value;
    return { id: joint.id, operatingAngle, maximum, minimum, verdict: verdict(estimateVerdict(operatingAngle, { minimum, maximum })) };
  });

  const equivalentAngle = estimateOf(chain.whole, (angle) => angle);
  const benchResidual = estimateOf(chain.bench, (angle) => angle);
  const cancellation: CancellationResult = {
    equivalentAngle,
    equivalentMaximum: limits.equivalentAngle.value,
    verdict: verdict(estimateVerdict(equivalentAngle, { maximum: limits.equivalentAngle.value })),
    benchResidual,
    benchVerdict: withheld ? null : benchVerdict(benchResidual, limits.benchMet.value, limits.benchAccepted.value),
    bestPhasing: chain.whole ? Object.fromEntries(bestPhasing(driveline, bestPoses(model))) : {},
  };

  const described = motionResult(driveline, chain, highest);
  const motion: MotionResult = {
    ...described,
    verdict: verdict(
      worstVerdict(judgements(described, limits).map(({ estimate, limit }) => estimateVerdict(estimate, { maximum: limit }))),
    ),
  };

  const sharesAt = (place: number) => sensitivityOf(driveline, model, place);
  const sensitivity = chain.whole ? sharesAt(index.whole) : [];
  const findings: readonly Finding[] = withheld
    ? []
    : [
        ...betterPhasingFindings(driveline, bestPoses(model), chain, path),
        ...jointFindings(joints, (k) => sharesAt(index.joint(k)), path),
        ...cancellationFindings(cancellation, sensitivity, path),
        ...motionFindings(described, limits, sharesAt, path),
      ];
  return {
    drivelineId: driveline.id,
    shafts: poseEstimates(model, chain.poses),
    joints,
    cancellation,
    motion,
    sensitivity,
    withheld,
    findings,
  };
}
