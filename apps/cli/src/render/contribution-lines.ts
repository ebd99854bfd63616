import type { AttributionJson, ContributionJson } from "@halfturn/casefile";
import { capital, type NameOf, probabilityText } from "@halfturn/words";
import { valueWithin } from "./quantity-text.js";
import { table } from "./table.js";
import type { View } from "./view.js";
import { wrap } from "./wrap.js";

/** An order that explains less, and is less probable, is left to --json. */
const LEAST_SHARE = 0.005;
const MOST_ROWS = 8;

/** The orders that can be seen, largest first: how fast, how large, what share, how probable. */
export function contributionLines(json: AttributionJson, accessoryName: NameOf, view: View): readonly string[] {
  const { vibration, orders, numbers, labels, terminal } = view.words;
  const { listening } = terminal;
  const seen = json.contributions.filter(({ observable }) => observable).toSorted((a, b) => weightOf(b) - weightOf(a));
  const shown = seen.filter((one, k) => k < MOST_ROWS && (k === 0 || weightOf(one) >= LEAST_SHARE));
  const inUnits = shown.some(({ amplitudeMS2 }) => amplitudeMS2 !== null);
  const header = [orders.part, orders.order, "Hz", ...(inUnits ? ["m/s²"] : []), vibration.share, vibration.probability];
  const rows = shown.map((one) => [
    orders.parts[one.part as keyof typeof orders.parts] ?? accessoryName(one.part),
    numbers.plain(one.order, Number.isInteger(one.order) ? 0 : 1),
    numbers.plainInterval(one.frequencyHz[0], one.frequencyHz[1], 1),
    ...(inUnits ? [valueWithin(one.amplitudeMS2, numbers, labels.notKnown)] : []),
    one.share === null ? "" : numbers.share(one.share),
    one.probability === null ? "" : probabilityText(one.probability, numbers),
  ]);
  const aligns = ["left", "right", "right", ...(inUnits ? (["right"] as const) : []), "right", "right"] as const;
  const left = seen.length - shown.length;
  const sentences = [
    `${vibration.unexplained}: ${numbers.share(json.unexplainedShare)}.`,
    ...together(shown, accessoryName, view),
    ...(inUnits ? [`${listening.amplitudesIn(json.channel)} ${listening.probabilityMeans}`] : [listening.probabilityMeans]),
    ...(left > 0 ? [listening.smaller(numbers.plain(left, 0))] : []),
  ];
  return [
    view.paint("strong", listening.contributions),
    ...table([header.map((text) => view.paint("aside", text)), ...rows], aligns),
    ...sentences.flatMap((sentence) => wrap(sentence, view.width, "    ", "  ").map((line) => view.paint("aside", line))),
  ];
}

const weightOf = ({ share, probability }: ContributionJson): number => Math.max(share ?? 0, probability ?? 0);

/** Orders whose numbers are of several together. */
const together = (
  shown: readonly ContributionJson[],
  accessoryName: NameOf,
  { words: { orders, numbers, terminal } }: View,
): readonly string[] =>
  shown
    .filter((one) => one.together.length > 0)
    .map((one) => {
      const name = ({ part, order }: ContributionJson["together"][number]): string => orders.orderOf(part, order, accessoryName);
      const others = one.together.filter(({ part, order }) => part !== one.part || order !== one.order).map(name);
      return `${capital(name(one))}: ${terminal.listening.with(numbers.all(others))}.`;
    });
