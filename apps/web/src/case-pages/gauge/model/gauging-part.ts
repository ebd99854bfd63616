import type { Case } from "@halfturn/casefile";
import { itemKeys } from "@halfturn/exchange";

/** The place of what is half typed for a gauging, by what tells it from the others: two that say no time are still two. */
export const gaugingPart = ({ gauging = [] }: Pick<Case, "gauging">, index: number): string =>
  `gauging ${encodeURIComponent(itemKeys("gauging", gauging)[index] ?? "")}`;
