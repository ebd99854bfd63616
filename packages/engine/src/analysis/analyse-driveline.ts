import type { Finding } from "../findings/index.js";
import { fuseGauging } from "../gauging/index.js";
import { ASSUMED_SPEED, analysePoses } from "./analyse-poses.js";
import type { DrivelineAnalysis } from "./driveline-analysis.js";
import { phasingFindings } from "./driveline-findings.js";
import type { AnalysisInput } from "./input.js";

/** Stop findings that a person accepted become warnings, and the decision is put on record. */
function withDecisions(findings: readonly Finding[], accepted: AnalysisInput["accepted"]): readonly Finding[] {
  const taken = findings.filter(({ code, severity }) => severity === "stop" && accepted.includes(code));
  return [
    ...findings.map(
      (finding): Finding =>
        taken.includes(finding) ? { ...finding, severity: "warn", params: { ...finding.params, accepted: true } } : finding,
    ),
    ...taken.map(({ code, path }): Finding => ({ code: "decision.stop-accepted", severity: "note", path, params: { code } })),
  ];
}

/**
 * The main job: from the readings of one driveline to its joint angles, cancellation and motion, with everything the readings gave cause to say.
 * A stop finding that nobody accepted withholds every verdict. Deterministic for a given seed. Angles in radians, accelerations in rad/s2.
 */
export function analyseDriveline(input: AnalysisInput): DrivelineAnalysis {
  const { driveline, path } = input;
  const poses = fuseGauging(input.gauging, driveline);
  const stated = withDecisions(poses.findings, input.accepted);
  const analysis = analysePoses({ ...input, poses, withheld: stated.some(({ severity }) => severity === "stop") });
  const speed: readonly Finding[] =
    input.maxShaftSpeed === null
      ? [{ code: "vehicle.no-maximum-speed", severity: "note", path: "vehicle", params: { assumedRpm: ASSUMED_SPEED } }]
      : [];
  return { ...analysis, findings: [...stated, ...speed, ...phasingFindings(driveline, path), ...analysis.findings] };
}
