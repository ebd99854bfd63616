import type { Block } from "./blocks.js";
import type { Subject } from "./subject.js";

/** Every finding of a gauging, with what to do next. */
export function findingsBlocks(subject: Subject): readonly Block[] {
  const { labels } = subject.catalogue;
  if (subject.findings.length === 0) return [{ kind: "paragraph", text: labels.noFindings }];
  return [{ kind: "findings", doNextLabel: labels.doNext, items: subject.findings.map(({ entry }) => entry) }];
}
