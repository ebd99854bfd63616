import type { FindingCode } from "@halfturn/engine/findings";
import { findingText } from "@halfturn/words";
import type { Notice } from "./blocks.js";
import { dayText } from "./day-text.js";
import type { Subject } from "./subject.js";

/** Who accepted it, when and why, as the case records it. */
function recordLines({ words, catalogue, report }: Subject, code: FindingCode): readonly string[] {
  const record = report.case.acceptedFindings?.findLast((accepted) => accepted.code === code);
  if (!record) return [words.accepted.unrecorded];
  const day = dayText(record.at, catalogue.language);
  return [
    record.by ? words.accepted.by(record.by, day) : words.accepted.unnamed(day),
    record.reason ? words.accepted.reason(record.reason) : words.accepted.noReason,
  ];
}

function acceptedNotice(subject: Subject, code: FindingCode): Notice {
  const { words, catalogue, nameOf } = subject;
  const found = subject.findings.find(({ finding }) => finding.code === code)?.entry;
  const title = found?.title ?? findingText(catalogue, { code, severity: "stop", path: "", params: {} }, nameOf).title;
  return {
    kind: "notice",
    tone: "stop",
    title: words.accepted.title(title),
    lines: [...(found ? [found.says] : []), words.accepted.says, ...recordLines(subject, code)],
  };
}

/** Stop findings that a person took on, with who, when and why; nobody may miss them. */
export function acceptedNotices(subjects: readonly Subject[]): readonly Notice[] {
  const seen = new Set<FindingCode>();
  return subjects.flatMap((subject) =>
    subject.input.accepted.flatMap((code) => {
      if (seen.has(code)) return [];
      seen.add(code);
      return [acceptedNotice(subject, code)];
    }),
  );
}
