import { findingText } from "@halfturn/words";
import type { Notice } from "./blocks.js";
import { dayText } from "./day-text.js";
import type { Subject } from "./subject.js";

/** Stop findings that a person took on, with who, when and why; nobody may miss them. */
export function acceptedNotices(subjects: readonly Subject[]): readonly Notice[] {
  const seen = new Set<string>();
  return subjects.flatMap((subject): Notice[] => {
    const { words, catalogue, report, input, nameOf } = subject;
    return input.accepted.flatMap((code): Notice[] => {
      if (seen.has(code)) return [];
      seen.add(code);
      const found = subject.findings.find(({ finding }) => finding.code === code);
      const title = found?.entry.title ?? findingText(catalogue, { code, severity: "stop", path: "", params: {} }, nameOf).title;
      const record = report.case.acceptedFindings?.findLast((accepted) => accepted.code === code);
      const day = record ? dayText(record.at, catalogue.language) : "";
      const who = !record ? words.accepted.unrecorded : record.by ? words.accepted.by(record.by, day) : words.accepted.unnamed(day);
      const reason = !record ? [] : [record.reason ? words.accepted.reason(record.reason) : words.accepted.noReason];
      return [{ kind: "notice", tone: "stop", title: words.accepted.title(title), lines: [...(found ? [found.entry.says] : []), words.accepted.says, who, ...reason] }];
    });
  });
}
