import type { CaseDriveline, CaseGauging } from "@halfturn/casefile";
import type { Finding } from "@halfturn/engine/findings";
import { type Catalogue, catalogueOf, drivelineName, findingText, type NameOf, type Numbers, namesOf, placeInWords } from "@halfturn/words";
import { type ReportWords, reportWords } from "../words/index.js";
import type { FindingEntry } from "./blocks.js";
import { findingEntries } from "./finding-entries.js";
import type { ReportedGauging, ReportInput } from "./report-input.js";

/** One gauging with everything its sections need at hand. */
export interface Subject extends ReportedGauging {
  readonly report: ReportInput;
  readonly catalogue: Catalogue;
  readonly words: ReportWords;
  readonly numbers: Numbers;
  readonly driveline: CaseDriveline;
  /** Its place in the case's `drivelines`. */
  readonly index: number;
  /** null where the driveline was never gauged. */
  readonly gauged: CaseGauging | null;
  readonly nameOf: NameOf;
  readonly title: string;
  /** Numbered through the whole report, stops first within each gauging. */
  readonly findings: readonly { readonly finding: Finding; readonly entry: FindingEntry }[];
}

/** Looks up what each reported gauging is about; throws where the report was asked for a gauging that the case does not hold. */
export function subjectsOf(report: ReportInput): readonly Subject[] {
  const catalogue = catalogueOf(report.language, report.units);
  const words = reportWords[report.language];
  const subjects: Subject[] = [];
  let number = 1;
  for (const reported of report.gaugings) {
    const index = report.case.drivelines.findIndex((one) => one.id === reported.analysis.drivelineId);
    const driveline = report.case.drivelines[index];
    const gauged = reported.gauging === null ? null : report.case.gauging?.[reported.gauging];
    if (!driveline || gauged === undefined)
      throw new Error(`The case has no gauging ${reported.gauging} of driveline ${reported.analysis.drivelineId}.`);
    const nameOf = namesOf(report.case, index, catalogue);
    const findings = findingEntries(
      reported.analysis.findings,
      number,
      (finding) => findingText(catalogue, finding, nameOf),
      catalogue.severities,
      (path) => placeText(path, nameOf, catalogue, words),
    );
    number += findings.length;
    const stage = gauged ? catalogue.labels.stages[gauged.stage] : catalogue.labels.verdicts["not-gauged"];
    const title = words.headings.driveline(drivelineName(report.case, index, catalogue), stage);
    subjects.push({ ...reported, report, catalogue, words, numbers: catalogue.numbers, driveline, index, gauged, nameOf, title, findings });
  }
  return subjects;
}

/** Where a finding is about, by name or by count; a key of the file alone needs no telling. */
function placeText(path: string, nameOf: NameOf, catalogue: Catalogue, words: ReportWords): string {
  const name = nameOf(path);
  const place = name === path ? placeInWords(catalogue.phrases, path) : name;
  return place === null ? "" : words.tables.where(place);
}
