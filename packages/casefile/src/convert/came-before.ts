import type { CaseCorrection } from "../schema/case.js";

/** A correction came before a gauging of a driveline when it was worked out from an earlier one of the same driveline. */
export const cameBefore = ({ basis }: CaseCorrection, driveline: string | undefined, gauging: number): boolean =>
  basis.some((one) => one.driveline === driveline && one.gauging < gauging);
