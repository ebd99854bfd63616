import type { Finding, Severity } from "../findings/index.js";
import { contradictionFindings } from "./contradiction-findings.js";
import { explanationsOf } from "./explanations.js";
import type { Gauging } from "./gauging.js";
import { CRITICAL_CONTRAST, largestContrast } from "./largest-contrast.js";
import { fitLinear } from "./linear-fit.js";
import { type Observation, zeroIndex } from "./observation.js";
import { type SlipVerdict, weighSlips } from "./weigh-slips.js";
import { fitWithAssumedZero, withBelievableZero } from "./zero-prior.js";

/** The observations that the estimate may rest on, and what was found on the way. */
export interface Contradictions {
  readonly kept: readonly Observation[];
  readonly findings: readonly Finding[];
}

/** Readings of the turn-round check alone, or a far zero: they move all shafts alike where every reading was taken from one side. */
function isHarmless(verdict: SlipVerdict, observations: readonly Observation[]): boolean {
  const sides = new Set(observations.flatMap((o) => (o.kind === "absolute" ? [o.reading.zeroSign] : [])));
  return sides.size <= 1 && verdict.suspects.every((k) => ["zero-check", "zero-prior"].includes(observations[k]?.kind ?? ""));
}

/** Whether every shaft that was known stays known without the readings blamed. */
function staysKnown(kept: readonly Observation[], without: readonly Observation[], gauging: Gauging, shafts: readonly string[]): boolean {
  const left = kept.filter((observation) => !without.includes(observation));
  if (left.length === 0) return false;
  const before = fitWithAssumedZero(kept, gauging, shafts).known;
  const after = fitWithAssumedZero(left, gauging, shafts).known;
  return shafts.every((_, s) => !before[s] || after[s]);
}

/** What is settled about one contradiction: readings to leave out, or none and a stop. */
function settle(
  verdict: SlipVerdict,
  observations: readonly Observation[],
  staysWithout: (blamed: readonly Observation[]) => boolean,
): { readonly severity: Severity; readonly setAside: readonly number[] } {
  const wrong = verdict.wrong.filter((k) => observations[k]?.kind !== "zero-prior");
  const decided = verdict.wrong.length > 0;
  if (decided && staysWithout(wrong.flatMap((k) => observations[k] ?? []))) return { severity: "warn", setAside: wrong };
  return { severity: isHarmless(verdict, observations) ? "warn" : "stop", setAside: [] };
}

/**
 * Looks for readings that contradict one another, one contradiction at a time, until what is left agrees.
 * A reading that the data call wrong is set aside; where they do not decide, all suspects stay in the estimate under a stop finding, and are left out
 * of the further search only. observations: of readings and turn-round check.
 * Source: iterated data snooping, W. Baarda 1968 (from memory).
 */
export function findContradictions(observations: readonly Observation[], gauging: Gauging, shafts: readonly string[]): Contradictions {
  let kept = observations;
  let searched = observations;
  let doubtZero = true;
  const findings: Finding[] = [];
  while (searched.length > 0) {
    const tested: readonly Observation[] = doubtZero ? withBelievableZero(searched, gauging, shafts) : searched;
    const fit = fitLinear(tested);
    if (largestContrast(fit, tested) <= CRITICAL_CONTRAST) break;
    const verdict = weighSlips(explanationsOf(fit, tested, zeroIndex(shafts)));
    const { severity, setAside } = settle(verdict, tested, (blamed) => staysKnown(kept, blamed, gauging, shafts));
    findings.push(...contradictionFindings(verdict, tested, severity, setAside));
    const suspects = verdict.suspects.flatMap((k) => tested[k] ?? []);
    const leftOut = setAside.flatMap((k) => tested[k] ?? []);
    kept = kept.filter((observation) => !leftOut.includes(observation));
    searched = searched.filter((observation) => !suspects.includes(observation));
    doubtZero &&= !suspects.some(({ kind }) => kind === "zero-prior");
  }
  return { kept, findings };
}
