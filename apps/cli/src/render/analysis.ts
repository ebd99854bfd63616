import { type AnalysisJson, type Case, type DrivelineJson, toDriveline, toLimits } from "@halfturn/casefile";
import type { Finding, FindingCode } from "@halfturn/engine/findings";
import { benchSigns } from "@halfturn/engine/kinematics";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { drivelineName, drivelineOfPath, findingText, namesOf } from "@halfturn/words";
import { cancellationLines } from "./cancellation.js";
import { findingLines, gravestFirst } from "./findings.js";
import { jointLines } from "./joints.js";
import { motionLines } from "./motion.js";
import { shaftLines } from "./shafts.js";
import { titleLines } from "./title.js";
import type { View } from "./view.js";
import { wrap } from "./wrap.js";

/** An analysis for people, as lines of a page. */
export function analysisLines(analysis: AnalysisJson, document: Case, draws: number, view: View): readonly string[] {
  const { explanations, terminal, numbers } = view.words;
  return [
    ...titleLines(document, view),
    ...analysis.drivelines.flatMap((driveline) => [...drivelineLines(driveline, analysis.findings, document, view), ""]),
    ...findingLines(analysis.findings, document, view),
    ...withheldHint(analysis, view),
    "",
    ...wrap(`${explanations.intervalsMean} ${terminal.analysed.seedAndDraws(analysis.seed, numbers.plain(draws, 0))}`, view.width, "").map(
      (line) => view.paint("aside", line),
    ),
  ];
}

function drivelineLines(driveline: DrivelineJson, findings: readonly Finding[], document: Case, view: View): readonly string[] {
  const { labels, terminal, explanations } = view.words;
  const index = document.drivelines.findIndex(({ id }) => id === driveline.id);
  const nameOf = namesOf(document, index, view.words);
  const name = drivelineName(document, index, view.words);
  const heading =
    driveline.stage === null || driveline.gauging === null
      ? `${name}, ${labels.verdicts["not-gauged"]}`
      : terminal.analysed.heading(name, labels.stages[driveline.stage], driveline.gauging);
  // With nothing gauged there is nothing to tabulate; the findings say what to gauge.
  if (driveline.shafts.every(({ inclinationDeg }) => inclinationDeg === null)) return [view.paint("strong", heading)];
  const limits = toLimits(document, DEFAULT_LIMITS);
  const kinds = document.drivelines[index]?.joints.map(({ kind }) => kind) ?? [];
  const withheld = driveline.cancellation.verdict === "withheld" || driveline.joints.some(({ verdict }) => verdict === "withheld");
  return [
    view.paint("strong", heading),
    ...(withheld ? wrap(explanations.notRoadAngles, view.width, "  ").map((line) => view.paint("bad", line)) : []),
    "",
    ...shaftLines(driveline.shafts, nameOf, view),
    "",
    ...jointLines(driveline.joints, kinds, nameOf, view),
    "",
    ...cancellationLines(driveline, benchSigns(toDriveline(document, index, driveline.gauging)), limits, view),
    "",
    ...motionLines(driveline.motion, limits, nameOf, view),
    ...repeatLines(index, findings, document, view),
  ];
}

/** Of the uncertain verdicts the one that matters most comes first. */
const UNCERTAIN: readonly FindingCode[] = ["cancellation.uncertain", "motion.uncertain", "joint.uncertain"];

/** Where a verdict is uncertain: which reading to take again. */
function repeatLines(index: number, findings: readonly Finding[], document: Case, view: View): readonly string[] {
  const first = UNCERTAIN.flatMap((code) =>
    findings.filter((finding) => finding.code === code && drivelineOfPath(document, finding.path) === index),
  )[0];
  if (!first) return [];
  const { doNext } = findingText(view.words, first, namesOf(document, index, view.words));
  return ["", view.paint("strong", view.words.labels.repeatFirst), ...wrap(doNext, view.width, "  ")];
}

function withheldHint(analysis: AnalysisJson, view: View): readonly string[] {
  const open = analysis.drivelines.some(({ cancellation }) => cancellation.verdict === "withheld");
  const codes = [...new Set(gravestFirst(analysis.findings).flatMap(({ code, severity }) => (severity === "stop" ? [code] : [])))];
  return open && codes.length > 0 ? ["", ...wrap(view.words.terminal.analysed.withheldHint(codes.join(" --accept ")), view.width, "")] : [];
}
