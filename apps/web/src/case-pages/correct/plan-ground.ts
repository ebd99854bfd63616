import type { Case, CaseCorrection } from "@halfturn/casefile";

/** Whether a driveline of the correction was gauged again since: what is fitted counts it from then on. */
export const gaugedSince = ({ gauging = [] }: Case, { basis }: CaseCorrection): boolean =>
  basis.some((one) => gauging.some(({ driveline }, k) => driveline === one.driveline && k > one.gauging));

/** All that a plan rests on, as one text: while it stays the same, so do the plans. What was only chosen changes nothing that is fitted. */
export function groundOf(document: Case): string {
  const { drivelines, vehicle, limits, states, gauging, acceptedFindings, adjusters, corrections = [] } = document;
  const fitted = corrections.filter((correction) => gaugedSince(document, correction)).map(({ basis, changes }) => ({ basis, changes }));
  return JSON.stringify({ drivelines, vehicle, limits, states, gauging, acceptedFindings, adjusters, fitted });
}
