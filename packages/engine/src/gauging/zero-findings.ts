import type { Finding, Severity } from "../findings/index.js";
import { radiansToDegrees } from "../units/index.js";
import type { Gauging } from "./gauging.js";
import type { Observation } from "./observation.js";
import { isZeroOpen, UNCHECKED_ZERO } from "./zero-prior.js";

/** What is known of the gauge's own zero: it matters between shafts only where they were read from both sides. kept: at least one observation. */
export function zeroFindings(kept: readonly Observation[], gauging: Gauging, shafts: readonly string[]): readonly Finding[] {
  const absolute = kept.flatMap((observation) => (observation.kind === "absolute" ? [observation.reading] : []));
  const isMixed = new Set(absolute.map(({ zeroSign }) => zeroSign)).size > 1;
  const isOpen = isZeroOpen(kept, shafts);
  const severity: Severity = isMixed && isOpen ? "warn" : "note";
  const findings: Finding[] = [];
  if (isMixed) findings.push({ code: "gauging.sides-mixed", severity, path: `${gauging.path}.readings`, params: { zeroKnown: !isOpen } });
  if (isOpen) {
    const assumedDeg = radiansToDegrees(gauging.gauge.common ? gauging.gauge.accuracy : UNCHECKED_ZERO);
    findings.push({ code: "gauging.zero-not-checked", severity, path: `${gauging.path}.gauge`, params: { assumedDeg } });
  }
  return findings;
}
