import type { Case, NewCase, Restored } from "@halfturn/casefile";
import type { Change, PlanOptions } from "@halfturn/engine/correction";
import { proxy, type Remote, wrap } from "comlink";
import type { Calculations } from "./calculations.js";
import { FULL_DRAWS, QUICK_DRAWS } from "./draws.js";
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

const asked = new WeakMap<Case, Promise<Answer<"analyse">>>();

/** Intervals from few draws, at once; one document is worked out once, whoever asks first. */
export function analyseQuickly(document: Case): Promise<Answer<"analyse">> {
  const known = asked.get(document);
  if (known) return known;
  const answer = quick().analyse(document, QUICK_DRAWS);
  asked.set(document, answer);
  return answer;
}

export const analyseFully = (document: Case, draws: number): Promise<Answer<"analyse">> => thorough().analyse(document, draws);

/** What the vehicle will do after the changes, in every state of the case. */
export const predictCase = (document: Case, changes: readonly Change[]): Promise<Answer<"predict">> =>
  thorough().predict(document, changes, FULL_DRAWS);

/** The same from few draws, while a slider is moved. */
export const predictQuickly = (document: Case, changes: readonly Change[]): Promise<Answer<"predict">> =>
  quick().predict(document, changes, QUICK_DRAWS);

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
