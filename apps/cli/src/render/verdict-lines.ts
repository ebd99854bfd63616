import type { AttributionJson, OrderNameJson } from "@halfturn/casefile";
import type { RotatingPart } from "@halfturn/engine/orders";
import { capital, type NameOf, probabilityText } from "@halfturn/words";
import type { View } from "./view.js";
import { wrap } from "./wrap.js";

/** The order of a part that is named, or why none is. */
export function verdictLines(json: AttributionJson, parts: readonly RotatingPart[], accessoryName: NameOf, view: View): readonly string[] {
  const { vibration, orders, numbers, terminal } = view.words;
  const { verdict, abstained } = json;
  const name = ({ part, order }: OrderNameJson): string => orders.orderOf(part, order, accessoryName);
  if (verdict !== null) {
    const found = json.contributions.find(({ part, order }) => part === verdict.part && order === verdict.order);
    const cause = causeOf(parts, verdict);
    const sentence = vibration.verdict({
      order: name(verdict),
      cause: cause === null ? "" : orders.causes[cause],
      probability: probabilityText(verdict.probability, numbers),
      share: numbers.share(found?.share ?? 0),
    });
    return [view.paint("strong", `${terminal.listening.verdict}: ${capital(name(verdict))}`), ...wrap(sentence, view.width, "  ")];
  }
  const between = abstained === null ? "" : numbers.any(abstained.between.map(name));
  const sentence = vibration.abstained[abstained?.reason ?? "nothing"](between);
  return [view.paint("doubt", terminal.listening.noVerdict), ...wrap(sentence, view.width, "  ")];
}

/** What usually makes a part shake at an order. */
const causeOf = (parts: readonly RotatingPart[], { part, order }: OrderNameJson): RotatingPart["orders"][number]["cause"] | null =>
  parts.find((one) => one.part === part)?.orders.find((one) => one.order === order)?.cause ?? null;
