import type { Finding, Severity } from "@halfturn/engine/findings";
import type { FindingText } from "@halfturn/words";
import type { FindingEntry } from "./blocks.js";

const RANK: Readonly<Record<Severity, number>> = { stop: 0, warn: 1, note: 2 };

/** Findings in the order of weight, numbered from `first`. */
export function findingEntries(
  findings: readonly Finding[],
  first: number,
  textOf: (finding: Finding) => FindingText,
  severities: Readonly<Record<Severity, string>>,
  placeOf: (path: string) => string,
): readonly { readonly finding: Finding; readonly entry: FindingEntry }[] {
  const sorted = [...findings].sort((a, b) => RANK[a.severity] - RANK[b.severity]);
  return sorted.map((finding, k) => ({
    finding,
    entry: {
      number: first + k,
      severity: finding.severity,
      severityLabel: severities[finding.severity],
      ...textOf(finding),
      place: placeOf(finding.path),
    },
  }));
}
