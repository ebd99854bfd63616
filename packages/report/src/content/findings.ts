import type { Finding, Severity } from "@halfturn/engine/findings";
import type { FindingText } from "@halfturn/words";
import type { Block, FindingEntry } from "./blocks.js";
import type { Subject } from "./subject.js";

const RANK: Readonly<Record<Severity, number>> = { stop: 0, warn: 1, note: 2 };

/** Findings in the order of weight, numbered from `first`. */
export function findingEntries(
  findings: readonly Finding[],
  first: number,
  textOf: (finding: Finding) => FindingText,
  severities: Readonly<Record<Severity, string>>,
): readonly { readonly finding: Finding; readonly entry: FindingEntry }[] {
  const sorted = [...findings].sort((a, b) => RANK[a.severity] - RANK[b.severity]);
  return sorted.map((finding, k) => ({
    finding,
    entry: { number: first + k, severity: finding.severity, severityLabel: severities[finding.severity], ...textOf(finding), place: finding.path },
  }));
}

export function findingsBlocks(subject: Subject): readonly Block[] {
  const { labels } = subject.catalogue;
  if (subject.findings.length === 0) return [{ kind: "paragraph", text: labels.noFindings }];
  return [{ kind: "findings", doNextLabel: labels.doNext, items: subject.findings.map(({ entry }) => entry) }];
}
