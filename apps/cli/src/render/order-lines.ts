import type { ComplaintReach, PartJson } from "@halfturn/casefile";
import type { NameOf } from "@halfturn/words";
import { valueWithin } from "./quantity-text.js";
import { table } from "./table.js";
import type { View } from "./view.js";

/** The orders of each part below its name: how often, where over the complaint's speeds, and what usually causes it. */
export function orderLines(parts: readonly PartJson[], reach: ComplaintReach | null, partName: NameOf, view: View): readonly string[] {
  const { orders, labels, numbers } = view.words;
  const over = reach === null ? [] : [`Hz ${orders.atSpeeds(...numbers.roadSpeeds(...reach.speedKmh))}`];
  const header = [orders.order, "Hz", ...over, orders.cause].map((text) => view.paint("aside", text));
  const rows = parts.map(({ part, orders: ofPart }) =>
    ofPart.map(({ order, frequencyHz, cause }) => [
      numbers.plain(order, Number.isInteger(order) ? 0 : 1),
      valueWithin(frequencyHz, numbers, labels.notKnown),
      ...(reach === null ? [] : [numbers.plainInterval(...reach.range(part, order), 1)]),
      orders.causes[cause],
    ]),
  );
  // One table, so that the columns of all parts stand under one another; the names go between its lines.
  const [heading = "", ...lines] = table([header, ...rows.flat()], ["right", "right", ...over.map(() => "right" as const), "left"], 4);
  let next = 0;
  const grouped = parts.flatMap(({ part }, k) => {
    const first = next;
    next += rows[k]?.length ?? 0;
    return [`  ${partName(part)}`, ...lines.slice(first, next)];
  });
  return [view.paint("strong", orders.orders), heading, ...grouped];
}
