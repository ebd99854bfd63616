import type { CaseCorrection, CaseDriveline } from "@halfturn/casefile";
import {
  type Catalogue,
  type CorrectionText,
  catalogueOf,
  correctionNames,
  correctionText,
  drivelineName,
  type NameOf,
  type Numbers,
  namesOf,
} from "@halfturn/words";
import { type ReportWords, reportWords } from "../words/index.js";
import type { ReportedCorrection, ReportedGauging, ReportInput } from "./report-input.js";

type PredictedState = CaseCorrection["predicted"][number];
export type ForetoldDriveline = PredictedState["drivelines"][number];

/** What was foretold of one driveline in one state. */
export interface Foretold {
  readonly state: string;
  readonly stateName: string;
  readonly of: ForetoldDriveline;
  /** The state that the vehicle is in when it is gauged. */
  readonly asGauged: boolean;
}

/** One driveline that a correction was worked out for. */
export interface CorrectedDriveline {
  readonly driveline: CaseDriveline;
  /** Its place in the case's `drivelines`. */
  readonly index: number;
  readonly name: string;
  readonly nameOf: NameOf;
  readonly before: ReportedGauging | null;
  readonly after: ReportedGauging | null;
  readonly foretold: readonly Foretold[];
}

/** One correction with everything its sections need at hand. */
export interface CorrectionSubject {
  readonly report: ReportInput;
  readonly catalogue: Catalogue;
  readonly words: ReportWords;
  readonly numbers: Numbers;
  readonly text: CorrectionText;
  readonly record: CaseCorrection;
  readonly reported: ReportedCorrection;
  readonly drivelines: readonly CorrectedDriveline[];
}

/** Looks up what each reported correction is about; throws where the report was asked for a correction that the case does not hold. */
export function correctionSubjects(report: ReportInput): readonly CorrectionSubject[] {
  const catalogue = catalogueOf(report.language, report.units);
  const names = correctionNames(report.case, catalogue);
  return report.corrections.map((reported) => {
    const record = report.case.corrections?.[reported.correction];
    if (!record) throw new Error(`The case has no correction ${reported.correction}.`);
    const drivelines = report.case.drivelines.flatMap((driveline, index): readonly CorrectedDriveline[] => {
      if (!record.basis.some((basis) => basis.driveline === driveline.id)) return [];
      const resultOf = (results: readonly ReportedGauging[]): ReportedGauging | null =>
        results.find(({ analysis }) => analysis.drivelineId === driveline.id) ?? null;
      return [
        {
          driveline,
          index,
          name: drivelineName(report.case, index, catalogue),
          nameOf: namesOf(report.case, index, catalogue),
          before: resultOf(reported.before),
          after: resultOf(reported.after),
          foretold: record.predicted.flatMap(({ state, drivelines: all }) =>
            all
              .filter((one) => one.driveline === driveline.id)
              .map((of) => ({ state, stateName: names.state(state), of, asGauged: standsAsGauged(report, state, driveline.id) })),
          ),
        },
      ];
    });
    return {
      report,
      catalogue,
      words: reportWords[report.language],
      numbers: catalogue.numbers,
      text: correctionText(catalogue, names),
      record,
      reported,
      drivelines,
    };
  });
}

/** A state that moves nothing and loads nothing on this driveline; without any state the vehicle was looked at as gauged. */
function standsAsGauged({ case: document }: ReportInput, id: string, driveline: string): boolean {
  const state = document.states?.find((one) => one.id === id);
  if (!state) return id === "as-gauged";
  if ((state.driveline ?? driveline) !== driveline) return true;
  return (state.load ?? "none") === "none" && (state.axleTravelMm ?? 0) === 0 && (state.pinionPitchDeg ?? 0) === 0;
}
