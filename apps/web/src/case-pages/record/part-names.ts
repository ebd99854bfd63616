import type { Case } from "@halfturn/casefile";
import type { Catalogue, CommonPart, NameOf } from "@halfturn/words";

/** What the case calls the parts that an engine drives. */
export function accessoryNames({ vehicle }: Case): NameOf {
  const labels = new Map((vehicle?.accessories ?? []).map(({ id, label }) => [id, label ?? id]));
  return (id) => labels.get(id) ?? id;
}

/** What every part that turns is called. */
export const partName = ({ orders }: Catalogue, accessoryName: NameOf, part: string): string =>
  orders.parts[part as CommonPart] ?? accessoryName(part);
