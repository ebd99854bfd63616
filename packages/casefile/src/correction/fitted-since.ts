import type { ChosenGauging } from "../convert/latest-gaugings.js";
import type { Case, CaseCorrection } from "../schema/case.js";

/**
 * What the corrections of the case have put in at an adjuster before the gaugings in use were taken, in the unit of the file. A correction came before a gauging
 * when it was worked out from an earlier one of the same driveline. `fittedMm` and `fittedDeg` in the file are as found.
 */
export const fittedSince = (document: Case, adjusterId: string, inUse: readonly ChosenGauging[]): number =>
  (document.corrections ?? [])
    .filter((correction) => cameBefore(correction, document, inUse))
    .flatMap(({ changes }) => changes)
    .reduce((sum, { adjuster, amount }) => (adjuster === adjusterId ? sum + amount : sum), 0);

const cameBefore = ({ basis }: CaseCorrection, document: Case, inUse: readonly ChosenGauging[]): boolean =>
  inUse.some(({ driveline, gauging }) => {
    const id = document.drivelines[driveline]?.id;
    return gauging !== null && basis.some((one) => one.driveline === id && one.gauging < gauging);
  });
