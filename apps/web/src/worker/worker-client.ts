import type { Case, NewCase, Restored } from "@halfturn/casefile";
import type { PosesToJudge } from "@halfturn/engine/analysis";
import type { Change, PlanOptions } from "@halfturn/engine/correction";
import { proxy, type Remote, wrap } from "comlink";
import type { Calculations } from "./calculations.js";
import { FULL_DRAWS, QUICK_DRAWS } from "./draws.js";
import { remembering } from "./remembered.js";
import type { ReportRequest } from "./report-calculations.js";

type Answer<Name extends keyof Calculations> = Awaited<ReturnType<Calculations[Name]>>;

const start = (name: string): Remote<Calculations> =>
  wrap<Calculations>(new Worker(new URL("./calculation-worker.ts", import.meta.url), { type: "module", name }));

const once = <Made>(make: () => Made): (() => Made) => {
  let made: Made | null = null;
  return () => {
    made ??= make();
    return made;
  };
};

/** Answers while somebody types, so it is never given long work. */
const quick = once(() => start("quick"));
const thorough = once(() => start("thorough"));

let works = 0;

const contents = new WeakMap<Case, string>();

/** A case by what it says; when it was last changed says nothing. */
function contentOf(document: Case): string {
  const known = contents.get(document);
  if (known !== undefined) return known;
  const { updatedAt: _, ...said } = document;
  const content = JSON.stringify(said);
  contents.set(document, content);
  return content;
}

/** A case that is worked on, and what it may be after the next key. */
const KEPT_ANALYSES = 6;
/** Each adjuster one step either way, and the steps before. */
const KEPT_PREDICTIONS = 40;

/** Intervals from few draws, at once. What the next key will ask can be asked beforehand: its answer is then known when the key comes. */
export const quickAnalyses = remembering(KEPT_ANALYSES, contentOf, (document: Case) => quick().analyse(document, QUICK_DRAWS));

export const analyseFully = (document: Case, draws: number): Promise<Answer<"analyse">> => thorough().analyse(document, draws);

/** What a driveline moved by hand would do, with all draws. */
export const judgeFully = (poses: PosesToJudge): Promise<Answer<"judge">> => thorough().judge({ ...poses, draws: FULL_DRAWS });

/** What the vehicle will do after the changes, in every state of the case. */
export const predictCase = (document: Case, changes: readonly Change[]): Promise<Answer<"predict">> =>
  thorough().predict(document, changes, FULL_DRAWS);

/** The same from few draws, while a slider is moved; a step of it can be asked beforehand. */
export const quickPredictions = remembering(
  KEPT_PREDICTIONS,
  ({ document, changes }: { readonly document: Case; readonly changes: readonly Change[] }) =>
    `${JSON.stringify(changes)} ${contentOf(document)}`,
  async ({ document, changes }): Promise<Answer<"predict">> => quick().predict(document, changes, QUICK_DRAWS),
);

/** An empty case for a layout. */
export const makeCase = (wanted: NewCase): Promise<Case> => quick().newCase(wanted);

export const caseText = (document: Case): Promise<string> => quick().serialise(document);

/** What the corrections that were gauged again teach about lengths and arms. */
export const taughtBy = (document: Case): Promise<Answer<"taught">> => thorough().taught(document);

/** The report as plain data and as one HTML file. */
export const reportCase = (document: Case, request: ReportRequest): Promise<Answer<"report">> => thorough().report(document, request);

/** Every correction of the case with the results of the gaugings on both sides of it. */
export const correctionsOf = (document: Case): Promise<Answer<"corrections">> => thorough().corrections(document);

/** A case from the text of its file, checked by the schema. */
export const restoreCase = (text: string): Promise<Restored> => quick().restore(text);

export interface PlanWork {
  /** Called now and then with the share done, rising to 1. */
  readonly onProgress?: (share: number) => void;
  readonly signal?: AbortSignal;
}

/** The best corrections from the case's stock. Rejects with the signal's reason at once when stopped; the worker follows within a piece of its work. */
export async function planCase(document: Case, options: PlanOptions = {}, { onProgress, signal }: PlanWork = {}): Promise<Answer<"plan">> {
  signal?.throwIfAborted();
  works += 1;
  const work = works;
  const asked = thorough().plan(
    document,
    options,
    work,
    proxy((share: number) => {
      if (!signal?.aborted) onProgress?.(share);
    }),
  );
  if (!signal) return asked;
  return new Promise((resolve, reject) => {
    signal.addEventListener(
      "abort",
      () => {
        void thorough().stop(work);
        reject(signal.reason);
      },
      { once: true },
    );
    asked.then(resolve, reject);
  });
}
