import type { CorrectionBasis, PlanChoiceJson, PlanJson, PredictedStateJson } from "@halfturn/casefile";
import type { Finding } from "@halfturn/engine/findings";
import { limitUseText } from "@halfturn/words";
import { basisLines, groundLines, listed, missingLines } from "./basis-lines.js";
import { beforeAfterLines } from "./before-after.js";
import { blockLines } from "./block-lines.js";
import { type CorrectionView, correctionView } from "./correction-view.js";
import { comparisonLines, rankingLines } from "./plan-ranking.js";
import { stepLines } from "./plan-steps.js";
import { titleLines } from "./title.js";
import type { View } from "./view.js";
import { wrap } from "./wrap.js";

/** What the page of a plan is made from. */
export interface PlanPage {
  readonly plan: PlanJson;
  /** Every state with nothing changed. */
  readonly before: readonly PredictedStateJson[];
  readonly basis: CorrectionBasis;
  /** What was found about the gaugings and drivelines. */
  readonly findings: readonly Finding[];
  readonly draws: number;
  /** Number of the plan whose steps were asked for; null = the first, where it may cure. */
  readonly shown: number | null;
  readonly chosen: boolean;
  /** The case file as typed. */
  readonly path: string;
}

/** The ranking, what stands in the way, the steps of one plan, and what to measure next, as lines of a page. */
export function planLines(page: PlanPage, view: View): readonly string[] {
  const { plan, basis, path } = page;
  const { correction, explanations, terminal, numbers } = view.words;
  const named = correctionView(basis.document, view);
  const curable = plan.blockedBy.length === 0;
  const shown = page.shown ?? 1;
  const detail = page.shown !== null || curable ? plan.plans[shown - 1] : undefined;
  return [
    ...titleLines(basis.document, view),
    ...basisLines(basis, plan.leftOut, named),
    ...groundLines(page.findings, named),
    ...(curable ? [] : [...blockLines(plan, named), ""]),
    ...rankingLines(plan, named),
    "",
    ...comparisonLines(plan, named),
    ...(detail ? ["", ...detailLines(detail, shown, page.before, named)] : []),
    "",
    ...missingLines(plan.missing, named),
    ...(plan.notUsed.length === 0
      ? []
      : ["", view.paint("strong", correction.notUsed), ...listed([...new Set(plan.notUsed.map(named.text.reason))], view)]),
    "",
    ...(detail ? [] : [correction.showHint(path)]),
    ...(page.chosen || !curable ? [] : chooseHint(plan, shown, path, view)),
    ...wrap(
      `${correction.examined(numbers.plain(plan.examined, 0))} ${explanations.intervalsMean} ${terminal.analysed.seedAndDraws(plan.seed, numbers.plain(page.draws, 0))}`,
      view.width,
      "",
    ).map((line) => view.paint("aside", line)),
  ];
}

/** The shown plan, or the first that changes anything. A command is never broken into lines: it is there to be copied. */
function chooseHint({ plans }: PlanJson, shown: number, path: string, { words: { correction, numbers } }: View): readonly string[] {
  const first = plans.findIndex(({ changes }) => changes.length > 0) + 1;
  const number = (plans[shown - 1]?.changes.length ?? 0) > 0 ? shown : first;
  return number === 0 ? [] : [correction.chooseHint(path, numbers.plain(number, 0))];
}

function detailLines(plan: PlanChoiceJson, number: number, before: readonly PredictedStateJson[], view: CorrectionView): readonly string[] {
  const { correction } = view.words;
  const tightest = plan.tightest ? wrap(correction.tightest(...limitUseText(plan.tightest, view.words, view.names)), view.width, "  ") : [];
  return [
    view.paint("strong", `${correction.planNumber(number)}. ${correction.whatToDo}`),
    ...stepLines(plan.instructions, view),
    ...(plan.probabilityOfLimits < 0.5 ? wrap(correction.unlikely, view.width, "  ").map((line) => view.paint("doubt", line)) : []),
    ...tightest,
    ...(plan.changes.length === 0 ? [] : beforeAfterLines(before, plan.states, view)),
  ];
}
