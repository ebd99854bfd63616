import {
  benchVerdict,
  bestPoses,
  type CancellationResult,
  cancellationFindings,
  chainEstimates,
  type DrivelineAnalysis,
  estimateOf,
  estimateVerdict,
  type JointResult,
  jointFindings,
  judgements,
  motionFindings,
  motionResult,
  poseEstimates,
  quantityIndex,
  sensitivityOf,
  worstVerdict,
} from "../../analysis/index.js";
import type { PoseModel } from "../../gauging/index.js";
import { bestPhasing, type Driveline } from "../../kinematics/index.js";
import { maximumOperatingAngle } from "../../limits/index.js";
import { rpm, rpmToRadiansPerSecond } from "../../units/index.js";
import type { CorrectionDriveline } from "../model/index.js";

/** Speed taken where the case gives none: agreed design value, as in the analysis. */
const ASSUMED_SPEED = rpm(3000);

/**
 * A driveline as it will stand, analysed like a gauged one: same quantities, same intervals, same verdicts, from predicted poses with their error law.
 * `driveline` carries the phasings after the change.
 */
export function predictedAnalysis(
  on: CorrectionDriveline,
  driveline: Driveline,
  poses: PoseModel,
  options: { readonly draws: number; readonly seed: number },
): DrivelineAnalysis {
  const { limits, path } = on;
  const highest = on.maxShaftSpeed ?? ASSUMED_SPEED;
  const index = quantityIndex(driveline.joints.length);
  const chain = chainEstimates(driveline, poses, {
    ...options,
    beyond: (joint, angle) => joint.kind === "flexible" && angle > (joint.statedAngle ?? limits.jointAngle.flexible.value),
  });
  const joints = driveline.joints.map((joint, k): JointResult => {
    const operatingAngle = estimateOf(chain.joints[k] ?? null, (angle) => angle);
    const maximum = maximumOperatingAngle(joint, rpmToRadiansPerSecond(highest), limits);
    const minimum = limits.minimumAngle[joint.kind].value;
    return { id: joint.id, operatingAngle, maximum, minimum, verdict: estimateVerdict(operatingAngle, { minimum, maximum }) };
  });
  const equivalentAngle = estimateOf(chain.whole, (angle) => angle);
  const benchResidual = estimateOf(chain.bench, (angle) => angle);
  const cancellation: CancellationResult = {
    equivalentAngle,
    equivalentMaximum: limits.equivalentAngle.value,
    verdict: estimateVerdict(equivalentAngle, { maximum: limits.equivalentAngle.value }),
    benchResidual,
    benchVerdict: benchVerdict(benchResidual, limits.benchMet.value, limits.benchAccepted.value),
    bestPhasing: chain.whole ? Object.fromEntries(bestPhasing(driveline, bestPoses(poses))) : {},
  };
  const described = motionResult(driveline, chain, highest);
  const verdict = worstVerdict(judgements(described, limits).map(({ estimate, limit }) => estimateVerdict(estimate, { maximum: limit })));
  const sensitivity = sensitivityOf(driveline, poses, index.whole);
  return {
    drivelineId: driveline.id,
    shafts: poseEstimates(poses, options),
    joints,
    cancellation,
    motion: { ...described, verdict },
    sensitivity,
    withheld: false,
    findings: [
      ...jointFindings(joints, (k) => sensitivityOf(driveline, poses, index.joint(k)), path),
      ...cancellationFindings(cancellation, sensitivity, path),
      ...motionFindings(described, limits, sensitivity, path),
    ],
  };
}
