import { catalogueOf, cautionsOf, type Step } from "@halfturn/words";
import { reportWords } from "../words/index.js";
import { acceptedNotices } from "./accepted.js";
import type { Block, ReportContent, Section } from "./blocks.js";
import { cancellationBlocks } from "./cancellation.js";
import { compareSections } from "./compare.js";
import { conclusionBlocks } from "./conclusion.js";
import { correctSections } from "./correct.js";
import { correctionSubjects } from "./correction-subject.js";
import { dayText } from "./day-text.js";
import { figureBlocks } from "./figures.js";
import { findingsBlocks } from "./findings.js";
import { gaugedStateBlocks } from "./gauged-state.js";
import { jointsBlocks, shaftsBlocks } from "./joints.js";
import { motionBlocks } from "./motion.js";
import { isProved, proofNotice, proveSections } from "./prove.js";
import { provenanceBlocks } from "./provenance.js";
import { readingsBlocks } from "./readings.js";
import { recordSections } from "./record.js";

import type { ReportInput } from "./report-input.js";
import { type Subject, subjectsOf } from "./subject.js";
import { surenessBlocks } from "./sureness.js";
import { complaintText, vehicleBlocks } from "./vehicle.js";

/** The report asks for a recording, for gauging again, for a correction and for a proof drive; their cautions stand in it. */
const STEPS_OF_THE_REPORT: readonly Step[] = ["record", "gauge", "explain", "correct", "prove"];
const REMARK_LINES = 6;

function gaugingSections(subject: Subject): readonly Section[] {
  const { headings } = subject.words;
  const part = (title: string, blocks: readonly Block[]): Section => ({ title, level: 2, blocks });
  if (!subject.gauged) return [{ title: subject.title, level: 1, blocks: [...readingsBlocks(subject), ...findingsBlocks(subject)] }];
  return [
    { title: subject.title, level: 1, blocks: [] },
    part(headings.asGauged, gaugedStateBlocks(subject)),
    part(headings.readings, readingsBlocks(subject)),
    part(headings.joints, [...jointsBlocks(subject), ...shaftsBlocks(subject)]),
    part(headings.cancellation, cancellationBlocks(subject)),
    part(headings.motion, motionBlocks(subject)),
    part(headings.findings, findingsBlocks(subject)),
    part(headings.sureness, surenessBlocks(subject)),
    part(headings.figures, figureBlocks(subject)),
  ];
}

/** Where a driveline is reported at two stages, the later one decides. */
const latest = (subjects: readonly Subject[]): readonly Subject[] =>
  subjects.filter((subject, k) => !subjects.slice(k + 1).some((later) => later.driveline.id === subject.driveline.id));

/** The report as plain data, the conclusion first. One content for every renderer. */
export function reportContent(report: ReportInput): ReportContent {
  const catalogue = catalogueOf(report.language, report.units);
  const words = reportWords[report.language];
  const { labels, numbers, cautions } = catalogue;
  const subjects = subjectsOf(report);
  const corrections = correctionSubjects(report);
  const adjusters = report.case.adjusters?.length ?? 0;
  const proofs = corrections.filter(isProved);
  // The proof says before and after already.
  const proved = new Set(proofs.flatMap(({ drivelines }) => drivelines.map(({ driveline }) => driveline.id)));
  const section = (title: string, blocks: readonly Block[]): Section => ({ title, level: 1, blocks });
  const conclusion: readonly Block[] =
    subjects.length === 0
      ? [{ kind: "notice", tone: "none", title: words.conclusion.nothingAnalysed, lines: [] }]
      : latest(subjects).flatMap(conclusionBlocks);
  return {
    language: report.language,
    kind: words.kind,
    title: report.case.title,
    date: report.date,
    dateText: dayText(report.date, report.language),
    head: {
      kind: "facts",
      items: [
        { label: labels.vehicle, value: report.case.vehicle?.label ?? words.facts.notGiven },
        { label: labels.date, value: dayText(report.date, report.language) },
        { label: labels.complaint, value: complaintText(report.case, words, numbers) },
      ],
    },
    sections: [
      section(words.headings.conclusion, [...acceptedNotices(subjects), ...conclusion, ...proofs.slice(-1).map(proofNotice)]),
      ...compareSections(subjects.filter(({ driveline }) => !proved.has(driveline.id))),
      ...correctSections(corrections, adjusters, labels.steps.correct, words.correct.noneChosen(adjusters)),
      ...proveSections(corrections, labels.steps.prove),
      section(words.headings.vehicle, vehicleBlocks(report.case, words, numbers)),
      ...recordSections(report.case, catalogue, words),
      ...subjects.flatMap(gaugingSections),
      section(words.headings.cautions, [
        { kind: "paragraph", text: cautions.defersTo },
        ...STEPS_OF_THE_REPORT.map(
          (step): Block => ({ kind: "list", title: labels.steps[step], ordered: false, items: cautionsOf(cautions, step) }),
        ),
      ]),
      section(words.headings.provenance, provenanceBlocks(report, subjects, catalogue, words)),
      section(words.headings.remarks, [
        { kind: "paragraph", text: words.remarks.lead },
        { kind: "writing", label: words.remarks.technician, lines: REMARK_LINES },
        { kind: "signature", labels: [words.remarks.signature, words.remarks.date] },
      ]),
    ],
    pageOf: words.pageOf,
    codesShown: words.provenance.codesShown,
    tool: `Halfturn ${report.toolVersion}`,
  };
}
