import type { ChoiceJson, PlanJson } from "@halfturn/casefile";
import { highestProbabilityText, limitUseText, probabilityText } from "@halfturn/words";
import { type CorrectionView, changesText, changeText } from "./correction-view.js";
import { widthOf } from "./paint.js";
import { table } from "./table.js";
import { wrap } from "./wrap.js";

/** The plans in their order, one a line, with what is changed last so that it may run on. */
export function rankingLines({ plans }: PlanJson, view: CorrectionView): readonly string[] {
  const { correction, numbers } = view.words;
  const { chance, labour, margin, changes } = correction.columns;
  const rows = plans.map((plan, k) => [
    numbers.plain(k + 1, 0),
    chanceText(plan, view),
    numbers.plain(plan.labour, 1),
    marginText(plan, view),
  ]);
  const heads = ["", chance, labour, margin].map((text) => view.paint("aside", text));
  const [heading = "", ...lines] = table([heads, ...rows], ["right", "right", "right", "right"]);
  const texts = plans.map((plan) => changesText(plan.changes, view));
  return [
    view.paint("strong", correction.plans),
    `${heading}  ${view.paint("aside", changes)}`,
    ...lines.flatMap((line, k) => wrap(texts[k] ?? "", view.width, " ".repeat(widthOf(line) + 2), `${line}  `)),
    ...wrap(correction.readPlans, view.width, "  ").map((line) => view.paint("aside", line)),
  ];
}

/** Doing nothing, the best single change, and the best that leaves the axle alone. */
export function comparisonLines(
  { doingNothing, bestSingleChange, bestWithoutAxle, optima }: PlanJson,
  view: CorrectionView,
): readonly string[] {
  const { correction } = view.words;
  const line = (name: string, choice: ChoiceJson | null, none: string): readonly string[] => {
    const what = choice === null ? none : `${changesText(choice.changes, view)} (${measureText(choice, view)})`;
    return wrap(`${name}: ${what}`, view.width, "    ", "  ");
  };
  return [
    view.paint("strong", correction.comparisons),
    ...wrap(`${correction.doingNothing}: ${measureText(doingNothing, view)}`, view.width, "    ", "  "),
    ...(doingNothing.tightest
      ? wrap(correction.tightest(...limitUseText(doingNothing.tightest, view.words, view.names)), view.width, "      ", "    ")
      : []),
    ...line(correction.bestSingle, bestSingleChange, correction.noSingle),
    ...cutToMeasure(optima, bestSingleChange?.margin ?? doingNothing.margin, view),
    ...line(
      correction.withoutAxle,
      bestWithoutAxle && betters(bestWithoutAxle, doingNothing) ? bestWithoutAxle : null,
      bestWithoutAxle ? correction.noneBetter : correction.none,
    ),
  ];
}

/** Every limit in more draws, or in as many with more of the tightest left. */
const betters = (a: ChoiceJson, b: ChoiceJson): boolean =>
  a.probabilityOfLimits > b.probabilityOfLimits ||
  (a.probabilityOfLimits === b.probabilityOfLimits && (a.margin ?? Number.NEGATIVE_INFINITY) > (b.margin ?? Number.NEGATIVE_INFINITY));

/** A gain of the tightest limit by less than this is not worth a trip to the machine shop. */
const WORTH_MAKING = 0.02;

/** The best size of one adjuster, in stock or not, where it leaves clearly more of the tightest limit than the best that is in stock. */
function cutToMeasure(optima: PlanJson["optima"], stocked: number | null, view: CorrectionView): readonly string[] {
  const best = optima.reduce<PlanJson["optima"][number] | null>((most, one) => (most && most.margin >= one.margin ? most : one), null);
  if (!best || best.amount === 0 || (stocked !== null && best.margin < stocked + WORTH_MAKING)) return [];
  const { correction, numbers } = view.words;
  const margin = `${correction.columns.margin.toLowerCase()} ${numbers.share(best.margin)}`;
  return wrap(`${correction.cutToMeasure}: ${changeText(best, view)} (${margin})`, view.width, "    ", "  ");
}

const measureText = (choice: ChoiceJson, view: CorrectionView): string => {
  const { chance, labour, margin } = view.words.correction.columns;
  const words = [
    [chance, chanceText(choice, view)],
    [labour, view.words.numbers.plain(choice.labour, 1)],
    [margin, marginText(choice, view)],
  ] as const;
  return words.map(([name, value]) => `${name.toLowerCase()} ${value}`).join(", ");
};

/** A chance that leaves the slip spline out of account can only be lower with it. */
const chanceText = ({ probabilityWithin, probabilityOfLimits }: ChoiceJson, { words: { numbers } }: CorrectionView): string =>
  probabilityWithin === null ? highestProbabilityText(probabilityOfLimits, numbers) : probabilityText(probabilityWithin, numbers);

/** A margin that a hard limit forbids has no number. */
const marginText = ({ margin }: ChoiceJson, { words: { numbers, labels } }: CorrectionView): string =>
  margin === null ? labels.notKnown : numbers.share(margin);
