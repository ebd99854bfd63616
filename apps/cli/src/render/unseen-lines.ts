import type { AttributionJson } from "@halfturn/casefile";
import { capital, type NameOf } from "@halfturn/words";
import type { View } from "./view.js";
import { wrap } from "./wrap.js";

/** Orders that lie above what the recording can show: their silence must not be read as innocence. */
export function unseenLines(json: AttributionJson, accessoryName: NameOf, view: View): readonly string[] {
  const { orders, numbers, terminal } = view.words;
  const { listening } = terminal;
  const unseen = json.contributions.filter(({ observable }) => !observable);
  if (unseen.length === 0) return [];
  const lines = unseen.map(({ part, order, frequencyHz: [low, high], foldsToHz }) => {
    const where = listening.unseenOrder(capital(orders.orderOf(part, order, accessoryName)), numbers.plain(low, 0), numbers.plain(high, 0));
    return foldsToHz === null ? where : `${where}; ${listening.foldsTo(numbers.plain(foldsToHz, 0))}`;
  });
  return [
    "",
    view.paint("strong", listening.unseen),
    ...lines.flatMap((line) => wrap(line, view.width, "    ", "  ")),
    ...wrap(listening.unseenWhy(numbers.plain(json.bandHz, 0)), view.width, "  "),
  ];
}
