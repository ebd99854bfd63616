import { analyseCase, type Case, type NewCase, newCase, type Restored, restore, serialise, toCorrectionInput } from "@halfturn/casefile";
import { type Change, type PlanOptions, plan, predict } from "@halfturn/engine/correction";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { FULL_DRAWS } from "./draws.js";
import type { ReportRequest } from "./report-calculations.js";

/** The same numbers for the same case, on every device. */
const SEED = 1;
const settings = (draws: number) => ({ defaults: DEFAULT_LIMITS, draws, seed: SEED });

/** Lets a message in between two pieces of work, so that a stop is seen within a piece. */
const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

const stopped = new Set<number>();
const stopSignal = (work: number) => ({
  throwIfAborted: () => {
    if (stopped.has(work)) throw new DOMException("stopped", "AbortError");
  },
});

/** What the worker can be asked. Everything handed over is plain data. */
export const calculations = {
  analyse: (document: Case, draws: number) => analyseCase(document, {}, { draws, seed: SEED, accepted: [] }),

  predict: (document: Case, changes: readonly Change[], draws: number) => predict(toCorrectionInput(document, settings(draws)), changes),

  plan: async (document: Case, options: PlanOptions, work: number, onProgress: (share: number) => void) => {
    try {
      return await plan(toCorrectionInput(document, settings(FULL_DRAWS)), options, { signal: stopSignal(work), onProgress, pause });
    } finally {
      stopped.delete(work);
    }
  },

  /** Fetched when it is first asked for: most visits need no report. */
  report: async (document: Case, request: ReportRequest) =>
    (await import("./report-calculations.js")).makeReport(document, request, { draws: FULL_DRAWS, seed: SEED }),

  corrections: async (document: Case) =>
    (await import("./report-calculations.js")).correctionsOf(document, { draws: FULL_DRAWS, seed: SEED }),

  stop: (work: number): void => {
    stopped.add(work);
  },

  /** The text of a case's file. */
  serialise: (document: Case): string => serialise(document),

  newCase: (wanted: NewCase): Case => newCase(wanted),

  /** The case as the text of its file. */
  fileText: (document: Case): string => serialise(document),

  /** Reads a case file as it came: checked here, where the schema lives. */
  restore: (text: string): Restored => restore(text),
};

export type Calculations = typeof calculations;
