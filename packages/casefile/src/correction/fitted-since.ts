import { cameBefore } from "../convert/came-before.js";
import type { ChosenGauging } from "../convert/latest-gaugings.js";
import type { Case } from "../schema/case.js";

/**
 * What the corrections of the case have put in at an adjuster before the gaugings in use were taken, in the unit of the file. A correction came before a gauging
 * when it was worked out from an earlier one of the same driveline. `fittedMm` and `fittedDeg` in the file are as found.
 */
export const fittedSince = (document: Case, adjusterId: string, inUse: readonly ChosenGauging[]): number =>
  (document.corrections ?? [])
    .filter((correction) =>
      inUse.some(({ driveline, gauging }) => gauging !== null && cameBefore(correction, document.drivelines[driveline]?.id, gauging)),
    )
    .flatMap(({ changes }) => changes)
    .reduce((sum, { adjuster, amount }) => (adjuster === adjusterId ? sum + amount : sum), 0);
