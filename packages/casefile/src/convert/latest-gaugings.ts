import type { Case, Stage } from "../schema/case.js";

/** Which gauging speaks for a driveline; null where it was never gauged in the stage asked for. */
export interface ChosenGauging {
  readonly driveline: number;
  readonly gauging: number | null;
}

export interface GaugingChoice {
  readonly stage?: Stage;
  /** Index in `gauging`, from 0: only the driveline of that gauging is chosen. */
  readonly gauging?: number;
}

/**
 * For each driveline, in file order, the last gauging of its latest stage (`after` is later than `as-found`), or of the stage asked for.
 * With `gauging` only that one and its driveline; nothing where there is no such gauging, or it is of another stage than asked for.
 */
export function latestGaugings(document: Case, choice: GaugingChoice = {}): readonly ChosenGauging[] {
  const gaugings = document.gauging ?? [];
  if (choice.gauging !== undefined) {
    const named = gaugings[choice.gauging];
    if (!named || (choice.stage !== undefined && named.stage !== choice.stage)) return [];
    return [{ driveline: document.drivelines.findIndex(({ id }) => id === named.driveline), gauging: choice.gauging }];
  }
  return document.drivelines.map(({ id }, driveline) => {
    const lastOf = (stage: Stage) => gaugings.findLastIndex((gauging) => gauging.driveline === id && gauging.stage === stage);
    const after = choice.stage === "as-found" ? -1 : lastOf("after");
    const found = after >= 0 || choice.stage === "after" ? after : lastOf("as-found");
    return { driveline, gauging: found >= 0 ? found : null };
  });
}
