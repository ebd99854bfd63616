import type { AnalysedDriveline, Case } from "@halfturn/casefile";
import type { Step } from "@halfturn/words";

/** done: nothing is lacking. part: begun. open: not begun. trouble: something stands in the way. */
export type ProgressState = "done" | "part" | "open" | "trouble";

export type ProgressNote =
  | { readonly code: "described" | "complaint-missing" | "lengths-missing" | "phasing-missing" }
  | { readonly code: "recordings" | "observations"; readonly count: number }
  | { readonly code: "not-recorded" | "not-isolated" }
  | { readonly code: "not-gauged" | "gauged" | "not-road-angles" | "gauge-first" }
  | { readonly code: "shafts-to-read"; readonly count: number }
  | { readonly code: "within" | "over" | "uncertain" }
  | { readonly code: "nothing-to-adjust" | "not-chosen" | "chosen" | "made" }
  | { readonly code: "not-made" | "not-gauged-after" | "proved" }
  | { readonly code: "ready" };

export interface StepProgress {
  readonly state: ProgressState;
  readonly note: ProgressNote;
}

type Analysed = readonly AnalysedDriveline[] | null;

const say = (state: ProgressState, code: Exclude<ProgressNote, { readonly count: number }>["code"]): StepProgress => ({
  state,
  note: { code },
});

/** What a step still lacks. No step is ever locked by it. */
export function stepProgress(step: Step, document: Case, analysed: Analysed): StepProgress {
  switch (step) {
    case "describe":
      return describing(document);
    case "record":
      return counted("recordings", "not-recorded", document.recordings);
    case "isolate":
      return counted("observations", "not-isolated", document.observations);
    case "gauge":
      return gauging(document, analysed);
    case "explain":
      return explaining(document, analysed);
    case "correct":
      return correcting(document);
    case "prove":
      return proving(document);
    case "report":
      return isRead(document) ? say("done", "ready") : say("open", "gauge-first");
  }
}

function describing(document: Case): StepProgress {
  const { complaint, drivelines } = document;
  const sections = drivelines.flatMap((driveline) => driveline.sections);
  const complained = complaint?.speedKmh !== undefined || complaint?.notes !== undefined;
  const measured = sections.every(({ lengthMm }) => lengthMm !== undefined);
  const phased = sections.every(({ phasingDeg, phasingMeasured }) => phasingMeasured === true && typeof phasingDeg === "number");
  if (!complained) return say(measured || document.vehicle?.label ? "part" : "open", "complaint-missing");
  if (!measured) return say("part", "lengths-missing");
  return phased ? say("done", "described") : say("part", "phasing-missing");
}

const counted = (
  code: "recordings" | "observations",
  none: "not-recorded" | "not-isolated",
  list: readonly unknown[] | undefined,
): StepProgress => (list?.length ? { state: "done", note: { code, count: list.length } } : say("open", none));

function gauging(document: Case, analysed: Analysed): StepProgress {
  if (!document.gauging?.length) return say("open", "not-gauged");
  const findings = (analysed ?? []).flatMap(({ analysis }) => analysis.findings);
  const isEmpty = analysed?.every(({ analysis }) => analysis.shafts.every(({ inclination }) => inclination === null)) ?? false;
  if (!isEmpty && findings.some(({ severity }) => severity === "stop")) return say("trouble", "not-road-angles");
  const unread = (analysed ?? []).flatMap(({ analysis }) => analysis.shafts.filter(({ inclination }) => inclination === null)).length;
  return unread > 0 ? { state: "part", note: { code: "shafts-to-read", count: unread } } : say("done", "gauged");
}

/** A gauging that was begun says nothing until its first reading. */
const isRead = ({ gauging: gaugings = [] }: Case): boolean => gaugings.some(({ readings }) => readings.length > 0);

function explaining(document: Case, analysed: Analysed): StepProgress {
  if (!isRead(document) || !analysed) return say("open", "gauge-first");
  const verdicts = analysed.flatMap(({ analysis }) => [
    ...analysis.joints.map(({ verdict }) => verdict),
    analysis.cancellation.verdict,
    analysis.motion.verdict,
  ]);
  if (verdicts.includes("withheld")) return say("trouble", "not-road-angles");
  if (verdicts.includes("over") || verdicts.includes("under")) return say("trouble", "over");
  return verdicts.every((verdict) => verdict === "within") ? say("done", "within") : say("part", "uncertain");
}

function correcting({ adjusters = [], corrections = [] }: Case): StepProgress {
  const last = corrections.at(-1);
  if (last) return last.state === "made" ? say("done", "made") : say("part", "chosen");
  return say("open", adjusters.length > 0 ? "not-chosen" : "nothing-to-adjust");
}

function proving({ corrections = [], gauging: gaugings = [] }: Case): StepProgress {
  if (gaugings.some(({ stage }) => stage === "after")) return say("done", "proved");
  return corrections.length > 0 ? say("part", "not-gauged-after") : say("open", "not-made");
}
