import {
  analyseCase,
  type Case,
  type CorrectionBasis,
  correctionBasis,
  type NewCase,
  newCase,
  type Restored,
  restore,
  serialise,
  type TaughtGeometry,
} from "@halfturn/casefile";
import { analysePoses, type PosesToJudge } from "@halfturn/engine/analysis";
import { type Change, type PlanOptions, plan, predict } from "@halfturn/engine/correction";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { FULL_DRAWS } from "./draws.js";
import { pause } from "./pause.js";
import type { ReportRequest } from "./report-calculations.js";

/** The same numbers for the same case, on every device. */
const SEED = 1;
const settings = (draws: number) => ({ defaults: DEFAULT_LIMITS, draws, seed: SEED });

const stopped = new Set<number>();
const stopSignal = (work: number) => ({
  throwIfAborted: () => {
    if (stopped.has(work)) throw new DOMException("stopped", "AbortError");
  },
});

/** What the last question rested on: what earlier corrections taught takes longer to work out than a prediction, and a slider asks of one case again and again. */
let rested: { readonly text: string; readonly basis: CorrectionBasis } | null = null;

function basisOf(document: Case, draws: number): CorrectionBasis {
  const text = JSON.stringify([document, draws]);
  if (rested?.text !== text) rested = { text, basis: correctionBasis(document, settings(draws)) };
  return rested.basis;
}

/** What the worker can be asked. Everything handed over is plain data. */
export const calculations = {
  analyse: (document: Case, draws: number) => analyseCase(document, {}, { draws, seed: SEED, accepted: [] }),

  /** Of poses that no reading gave: a driveline moved by hand. */
  judge: (poses: PosesToJudge) => analysePoses(poses),

  predict: (document: Case, changes: readonly Change[], draws: number) => predict(basisOf(document, draws).input, changes),

  plan: async (document: Case, options: PlanOptions, work: number, onProgress: (share: number) => void) => {
    try {
      return await plan(basisOf(document, FULL_DRAWS).input, options, { signal: stopSignal(work), onProgress, pause });
    } finally {
      stopped.delete(work);
    }
  },

  /** Fetched when it is first asked for: most visits need no report. */
  report: async (document: Case, request: ReportRequest) =>
    (await import("./report-calculations.js")).makeReport(document, request, { draws: FULL_DRAWS, seed: SEED }),

  corrections: async (document: Case) =>
    (await import("./report-calculations.js")).correctionsOf(document, { draws: FULL_DRAWS, seed: SEED }),

  /** What the corrections that were gauged again teach about lengths and arms. */
  taught: (document: Case): TaughtGeometry => basisOf(document, FULL_DRAWS).taught,

  stop: (work: number): void => {
    stopped.add(work);
  },

  /** The text of a case's file. */
  serialise: (document: Case): string => serialise(document),

  newCase: (wanted: NewCase): Case => newCase(wanted),

  /** Reads a case file as it came: checked here, where the schema lives. */
  restore: (text: string): Restored => restore(text),
};

export type Calculations = typeof calculations;
