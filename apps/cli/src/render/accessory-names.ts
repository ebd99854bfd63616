import type { Case } from "@halfturn/casefile";
import type { NameOf } from "@halfturn/words";

/** What the case calls the parts that an engine drives. */
export function accessoryNames({ vehicle }: Case): NameOf {
  const labels = new Map((vehicle?.accessories ?? []).map(({ id, label }) => [id, label ?? id]));
  return (id) => labels.get(id) ?? id;
}
