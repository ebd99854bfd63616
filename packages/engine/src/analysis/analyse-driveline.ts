import type { Finding } from "../findings/index.js";
import { fuseGauging } from "../gauging/index.js";
import { bestPhasing } from "../kinematics/index.js";
import { maximumOperatingAngle } from "../limits/index.js";
import { type Rpm, rpm, rpmToRadiansPerSecond } from "../units/index.js";
import { chainEstimates, estimateOf } from "./chain-estimates.js";
import { quantityIndex } from "./chain-quantities.js";
import type { CancellationResult, DrivelineAnalysis, JointResult, MotionResult } from "./driveline-analysis.js";
import { betterPhasingFindings, phasingFindings } from "./driveline-findings.js";
import type { Verdict } from "./estimate.js";
import type { AnalysisInput } from "./input.js";
import { cancellationFindings, jointFindings, judgements, motionFindings } from "./limit-findings.js";
import { motionResult } from "./motion-result.js";
import { bestPoses } from "./pose-draws.js";
import { poseEstimates } from "./pose-estimates.js";
import { sensitivityOf } from "./sensitivity.js";
import { benchVerdict, estimateVerdict, worstVerdict } from "./verdict.js";

/** Taken when a case does not say how fast its shaft turns. Common practice, no source; a finding says that it was assumed. */
const ASSUMED_SPEED: Rpm = rpm(3000);

/** Stop findings that a person accepted become warnings, and the decision is put on record. */
function withDecisions(findings: readonly Finding[], accepted: AnalysisInput["accepted"]): readonly Finding[] {
  const taken = findings.filter(({ code, severity }) => severity === "stop" && accepted.includes(code));
  return [
    ...findings.map((finding): Finding => (taken.includes(finding) ? { ...finding, severity: "warn", params: { ...finding.params, accepted: true } } : finding)),
    ...taken.map(({ code, path }): Finding => ({ code: "decision.stop-accepted", severity: "note", path, params: { code } })),
  ];
}

/**
 * The main job: from the readings of one driveline to its joint angles, what they leave uncancelled, and the motion that comes of it,
 * each with its uncertainty and a verdict. Deterministic for a given seed. Angles in radians, accelerations in rad/s2.
 */
export function analyseDriveline(input: AnalysisInput): DrivelineAnalysis {
  const { driveline, limits, path } = input;
  const index = quantityIndex(driveline.joints.length);
  const model = fuseGauging(input.gauging, driveline);
  const poses = bestPoses(model);
  const highest = input.maxShaftSpeed ?? ASSUMED_SPEED;
  const chain = chainEstimates(driveline, model, {
    draws: input.draws,
    seed: input.seed,
    beyond: (joint, angle) => joint.kind === "flexible" && angle > (joint.statedAngle ?? limits.jointAngle.flexible.value),
  });

  const stated = withDecisions(model.findings, input.accepted);
  const withheld = stated.some(({ severity }) => severity === "stop");
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
    bestPhasing: chain.whole ? Object.fromEntries(bestPhasing(driveline, poses)) : {},
  };

  const described = motionResult(driveline, chain, highest);
  const motion: MotionResult = {
    ...described,
    verdict: verdict(worstVerdict(judgements(described, limits).map(({ estimate, limit }) => estimateVerdict(estimate, { maximum: limit })))),
  };

  const sensitivity = sensitivityOf(driveline, model, index.whole);
  const findings: readonly Finding[] = [
    ...stated,
    ...(input.maxShaftSpeed === null
      ? [{ code: "vehicle.no-maximum-speed", severity: "note", path: "vehicle", params: { assumedRpm: ASSUMED_SPEED } } as const]
      : []),
    ...phasingFindings(driveline, path),
    // Numbers that are not road angles are not held against the limits either.
    ...(withheld
      ? []
      : [
          ...betterPhasingFindings(driveline, poses, chain, path),
          ...jointFindings(joints, (k) => sensitivityOf(driveline, model, index.joint(k)), path),
          ...cancellationFindings(cancellation, sensitivity, path),
          ...motionFindings(described, limits, sensitivity, path),
        ]),
  ];
  return {
    drivelineId: driveline.id,
    shafts: poseEstimates(model, input),
    joints,
    cancellation,
    motion,
    sensitivity,
    withheld,
    findings,
  };
}
