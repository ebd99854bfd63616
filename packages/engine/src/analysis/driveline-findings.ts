import type { Finding } from "../findings/index.js";
import type { ShaftPose } from "../geometry/index.js";
import {
  bestPhasing,
  chainState,
  type Driveline,
  disturbingJoints,
  equivalentAngle,
  isBetween,
  type Joint,
  unevennessOf,
  wholeChain,
} from "../kinematics/index.js";
import { degreesToRadians, type Radians, radiansToDegrees } from "../units/index.js";
import type { ChainEstimates } from "./chain-estimates.js";

/** Another phasing is worth a remark when it would leave less by this much; below it the gauge cannot tell. */
const WORTH_MENTIONING = degreesToRadians(0.5);

/** A joint without yokes, through which a phasing can only be carried by a mark. */
const hasNoYoke = (joint: Joint | undefined): boolean => joint?.kind === "ball" || joint?.kind === "flexible";

/** What is missing in the phasing of the sections. Only between the first and the last joint that disturb the motion does a phasing change anything. */
export function phasingFindings(driveline: Driveline, path: string): readonly Finding[] {
  const findings: Finding[] = [];
  const disturbing = disturbingJoints(driveline);
  driveline.sections.forEach(({ id, phasing, phasingMeasured }, s) => {
    const place = `${path}.sections[${s}]`;
    if (phasing === null) {
      const yokeless = hasNoYoke(driveline.joints[s]) || hasNoYoke(driveline.joints[s + 1]);
      if (isBetween(s, disturbing)) {
        findings.push({
          code: yokeless ? "driveline.arm-reference-missing" : "driveline.phasing-unknown",
          severity: "warn",
          path: place,
          params: { section: id },
        });
      }
    } else if (!phasingMeasured) {
      findings.push({
        code: "driveline.phasing-not-measured",
        severity: "note",
        path: place,
        params: { section: id, phasingDeg: radiansToDegrees(phasing) },
      });
    }
  });
  return findings;
}

/** Sections that would leave less if they were phased otherwise, the others as they stand. */
export function betterPhasingFindings(
  driveline: Driveline,
  poses: readonly ShaftPose[],
  chain: ChainEstimates,
  path: string,
): readonly Finding[] {
  const findings: Finding[] = [];
  if (!chain.whole) return findings;
  for (const [section, phasing] of bestPhasing(driveline, poses)) {
    const sections = driveline.sections.map((each) => (each.id === section ? { ...each, phasing } : each));
    const left = equivalentAngle(unevennessOf(wholeChain(chainState({ ...driveline, sections }, poses))));
    if (left > chain.whole.value - WORTH_MENTIONING) continue;
    const s = driveline.sections.findIndex(({ id }) => id === section);
    findings.push({
      code: "driveline.better-phasing",
      severity: "note",
      path: `${path}.sections[${s}]`,
      params: {
        section,
        bestDeg: radiansToDegrees(phasing),
        phasingDeg: radiansToDegrees(driveline.sections[s]?.phasing ?? (0 as Radians)),
        bestEquivalentDeg: radiansToDegrees(left),
        equivalentDeg: radiansToDegrees(chain.whole.value as Radians),
      },
    });
  }
  return findings;
}
