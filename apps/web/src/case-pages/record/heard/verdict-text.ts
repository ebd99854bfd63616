import type { AttributionJson, OrderNameJson } from "@halfturn/casefile";
import { type Catalogue, type NameOf, probabilityText } from "@halfturn/words";
import type { HeardPart } from "../../../worker/listening/listening-types.js";

/** The verdict in a sentence: the order that is named and with what probability, or why none is. */
export function verdictText(
  { verdict, abstained, contributions }: AttributionJson,
  parts: readonly HeardPart[],
  nameOf: NameOf,
  { vibration, orders, numbers }: Catalogue,
): string {
  const name = ({ part, order }: OrderNameJson): string => orders.orderOf(part, order, nameOf);
  if (verdict === null) return vibration.abstained[abstained?.reason ?? "nothing"](numbers.any((abstained?.between ?? []).map(name)));
  const cause = parts.find(({ part }) => part === verdict.part)?.orders.find(({ order }) => order === verdict.order)?.cause;
  const share = contributions.find(({ part, order }) => part === verdict.part && order === verdict.order)?.share ?? 0;
  return vibration.verdict({
    order: name(verdict),
    cause: cause === undefined ? "" : orders.causes[cause],
    probability: probabilityText(verdict.probability, numbers),
    share: numbers.share(share),
  });
}
