import type { DrivelineAnalysis, MotionResult, SectionAcceleration, SpeedResult } from "@halfturn/engine/analysis";
import type { Finding } from "@halfturn/engine/findings";
import type { Stage } from "../schema/case.js";
import type { AnalysisJson, DrivelineJson, MotionJson, SectionAccelerationJson, SpeedJson } from "./analysis-contract.js";
import { angleQuantity, degrees, quantity } from "./quantity.js";

/** One driveline's results and which gauging they rest on; null where it was never gauged. */
export interface AnalysedGauging {
  readonly analysis: DrivelineAnalysis;
  readonly stage: Stage | null;
  readonly gauging: number | null;
}

/** The results of a case as `analyse --json` prints them: degrees, quantities with their uncertainty, findings of all drivelines together. */
export const analysisToJson = (analysed: readonly AnalysedGauging[], { seed }: { readonly seed: number }): AnalysisJson => ({
  format: "halfturn-analysis",
  version: 1,
  seed,
  drivelines: analysed.map(drivelineToJson),
  findings: distinct(analysed.flatMap(({ analysis }) => analysis.findings)),
});

/** One driveline of the contract; `predict` and `plan` print it too. */
export const drivelineToJson = ({ analysis, stage, gauging }: AnalysedGauging): DrivelineJson => ({
  id: analysis.drivelineId,
  stage,
  gauging,
  shafts: analysis.shafts.map(({ id, inclination, heading }) => ({
    id,
    inclinationDeg: angleQuantity(inclination),
    headingDeg: angleQuantity(heading),
  })),
  joints: analysis.joints.map(({ id, operatingAngle, maximum, minimum, verdict }) => ({
    id,
    operatingAngleDeg: angleQuantity(operatingAngle),
    maximumDeg: degrees(maximum),
    minimumDeg: degrees(minimum),
    verdict,
  })),
  cancellation: {
    equivalentAngleDeg: angleQuantity(analysis.cancellation.equivalentAngle),
    equivalentMaximumDeg: degrees(analysis.cancellation.equivalentMaximum),
    verdict: analysis.cancellation.verdict,
    benchResidualDeg: angleQuantity(analysis.cancellation.benchResidual),
    benchVerdict: analysis.cancellation.benchVerdict,
    bestPhasingDeg: Object.fromEntries(
      Object.entries(analysis.cancellation.bestPhasing).map(([section, phasing]) => [section, degrees(phasing)]),
    ),
  },
  motion: motionToJson(analysis.motion),
  sensitivity: analysis.sensitivity.map(({ path, of, share }) => ({ path, of, share })),
});

const motionToJson = (motion: MotionResult): MotionJson => ({
  transmissionErrorPeakToPeakDeg: angleQuantity(motion.transmissionErrorPeakToPeak),
  secondOrderDeg: angleQuantity(motion.secondOrder),
  fourthOrderDeg: angleQuantity(motion.fourthOrder),
  speeds: motion.speeds.map(speedToJson),
  verdict: motion.verdict,
});

const speedToJson = (speed: SpeedResult): SpeedJson => ({
  shaftRpm: speed.shaftSpeed,
  drivenAccelerationRadS2: quantity(speed.drivenAcceleration),
  sourceAccelerationCoastRadS2: quantity(speed.sourceAccelerationCoast),
  drive: speed.drive.map(sectionToJson),
  coast: speed.coast.map(sectionToJson),
});

const sectionToJson = ({ section, acceleration }: SectionAcceleration): SectionAccelerationJson => ({
  section,
  accelerationRadS2: quantity(acceleration),
});

/** Findings about the vehicle come with every driveline; each is said once. */
function distinct(findings: readonly Finding[]): readonly Finding[] {
  const seen = new Set<string>();
  return findings.filter((finding) => {
    const text = JSON.stringify(finding);
    if (seen.has(text)) return false;
    seen.add(text);
    return true;
  });
}
