import { CASE_FORMAT, CASE_VERSION } from "@halfturn/casefile";
import { type Catalogue, limitRows } from "@halfturn/words";
import type { ReportWords } from "../words/index.js";
import type { Block } from "./blocks.js";
import { dayText } from "./day-text.js";
import type { ReportInput } from "./report-input.js";
import type { Subject } from "./subject.js";

function limitsTable(subjects: readonly Subject[], catalogue: Catalogue, words: ReportWords): readonly Block[] {
  const limits = subjects[0]?.input.limits;
  if (!limits) return [];
  const kinds = [...new Set(subjects.flatMap(({ input }) => input.driveline.joints.map(({ kind }) => kind)))];
  return [
    {
      kind: "table",
      caption: words.tables.limits,
      columns: [
        { label: words.tables.quantity, align: "start", weight: 2.2 },
        { label: catalogue.labels.limit, align: "end", weight: 1.2 },
        { label: catalogue.labels.limitSource, align: "start", weight: 4 },
      ],
      rows: limitRows(catalogue, limits, kinds).map(({ name, value, source }) => [{ text: name }, { text: value }, { text: source }]),
      notes: [words.provenance.limitsLead],
    },
  ];
}

/** What somebody needs to get the same numbers again. */
export function provenanceBlocks(
  report: ReportInput,
  subjects: readonly Subject[],
  catalogue: Catalogue,
  words: ReportWords,
): readonly Block[] {
  const at = words.provenance;
  const unique = (values: readonly number[], decimals = 0): string =>
    [...new Set(values)].map((value) => catalogue.numbers.plain(value, decimals)).join(", ");
  const day = (moment: string): string => dayText(moment, catalogue.language);
  return [
    {
      kind: "facts",
      items: [
        { label: at.tool, value: `Halfturn ${report.toolVersion}` },
        { label: at.file, value: report.case.id },
        { label: at.formats, value: `${CASE_FORMAT} ${CASE_VERSION}` },
        ...(subjects.length === 0
          ? []
          : [
              { label: at.seed, value: [...new Set(subjects.map(({ input }) => String(input.seed)))].join(", ") },
              { label: at.draws, value: unique(subjects.map(({ input }) => input.draws)) },
            ]),
        { label: at.created, value: day(report.case.createdAt) },
        ...(report.case.updatedAt ? [{ label: at.updated, value: day(report.case.updatedAt) }] : []),
        { label: at.drawn, value: day(report.date) },
      ],
    },
    { kind: "paragraph", text: at.repeatable },
    ...limitsTable(subjects, catalogue, words),
  ];
}
