import type { BenchVerdict, Verdict } from "@halfturn/engine/analysis";
import type { Severity } from "@halfturn/engine/findings";
import type { Tone } from "./paint.js";
import type { View } from "./view.js";

const TONES: Readonly<Record<Verdict, Tone>> = {
  within: "good",
  over: "bad",
  under: "bad",
  uncertain: "doubt",
  "not-gauged": "aside",
  withheld: "bad",
};
const BENCH_TONES: Readonly<Record<BenchVerdict, Tone>> = { met: "good", acceptable: "doubt", exceeded: "bad" };
const SEVERITY_TONES: Readonly<Record<Severity, Tone>> = { stop: "bad", warn: "doubt", note: "note" };

export const verdictText = (verdict: Verdict, { paint, words }: View): string => paint(TONES[verdict], words.labels.verdicts[verdict]);

export const benchVerdictText = (verdict: BenchVerdict | null, { paint, words }: View): string =>
  verdict === null ? "" : paint(BENCH_TONES[verdict], words.labels.benchVerdicts[verdict]);

export const severityText = (severity: Severity, { paint, words }: View): string =>
  paint(SEVERITY_TONES[severity], words.severities[severity]);
