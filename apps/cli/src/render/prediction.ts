import { type CorrectionBasis, engineChange, isStocked, type PredictionJson } from "@halfturn/casefile";
import type { Finding } from "@halfturn/engine/findings";
import { basisLines, groundLines, listed, missingLines } from "./basis-lines.js";
import { beforeAfterLines } from "./before-after.js";
import { changeText, correctionView } from "./correction-view.js";
import { titleLines } from "./title.js";
import type { View } from "./view.js";
import { wrap } from "./wrap.js";

/** What changes would do, as lines of a page: before beside after. */
export function predictionLines(
  before: PredictionJson,
  after: PredictionJson,
  basis: CorrectionBasis,
  { draws, findings }: { readonly draws: number; readonly findings: readonly Finding[] },
  view: View,
): readonly string[] {
  const { correction, explanations, terminal, numbers } = view.words;
  const named = correctionView(basis.document, view);
  const made = after.changes
    .filter((change) => !isStocked(engineChange(change), basis.input))
    .map((change) => correction.notStocked(changeText(change, named)));
  const never = [...new Set(after.blockedBy.map((reason) => named.text.reason(reason)))];
  return [
    ...titleLines(basis.document, view),
    ...basisLines(basis, after.leftOut, named),
    ...groundLines(findings, named),
    view.paint("strong", correction.predicted),
    ...listed(
      after.changes.map((change) => changeText(change, named)),
      view,
    ),
    ...(made.length === 0 ? [] : ["", ...made.flatMap((line) => wrap(line, view.width, "    ", "  "))]),
    ...(never.length === 0 ? [] : ["", view.paint("bad", correction.neverFit), ...listed(never, view)]),
    ...beforeAfterLines(before.states, after.states, named),
    "",
    ...missingLines(after.missing, named),
    "",
    ...wrap(`${explanations.intervalsMean} ${terminal.analysed.seedAndDraws(after.seed, numbers.plain(draws, 0))}`, view.width, "").map(
      (line) => view.paint("aside", line),
    ),
  ];
}
