import type { Case } from "@halfturn/casefile";
import type { Finding, Severity } from "@halfturn/engine/findings";
import { drivelineOfPath, findingText, namesOf } from "@halfturn/words";
import { severityText } from "./verdict-text.js";
import type { View } from "./view.js";
import { wrap } from "./wrap.js";

const ORDER: readonly Severity[] = ["stop", "warn", "note"];

/** Findings, gravest first, otherwise in the order in which they were made. */
export const gravestFirst = (findings: readonly Finding[]): readonly Finding[] =>
  ORDER.flatMap((severity) => findings.filter((finding) => finding.severity === severity));

/** What was found, where, what it means and what to do next. */
export function findingLines(findings: readonly Finding[], document: Case, view: View): readonly string[] {
  const { labels } = view.words;
  if (findings.length === 0) return [labels.noFindings];
  return [view.paint("strong", labels.findings), ...gravestFirst(findings).flatMap((finding) => oneFinding(finding, document, view))];
}

function oneFinding(finding: Finding, document: Case, view: View): readonly string[] {
  const { labels, terminal } = view.words;
  const { title, says, doNext } = findingText(view.words, finding, namesOf(document, drivelineOfPath(document, finding.path), view.words));
  const place = finding.path === "" ? finding.code : `${finding.code} ${terminal.analysed.place(finding.path)}`;
  return [
    ...wrap(`${severityText(finding.severity, view)}: ${title}`, view.width, "    ", "  "),
    ...wrap(place, view.width, "    ").map((line) => view.paint("aside", line)),
    ...wrap(says, view.width, "    "),
    ...wrap(`${labels.doNext}: ${doNext}`, view.width, "    "),
  ];
}
