import type { Case, CaseAdjuster, CaseGauging } from "../schema/case.js";

/** Whether something measured, in stock or chosen names sections or joints of a driveline, so that they have to stay what they are. */
export const arePartsNamed = (document: Case, id: string): boolean => {
  const { gauging = [], adjusters = [], corrections = [], observations = [], runouts = [], balance = [] } = document;
  return (
    gauging.some((one) => one.driveline === id && hasReadings(one)) ||
    adjusters.some((one) => ofDriveline(one, id) && ("joint" in one || "section" in one)) ||
    corrections.some(
      ({ basis, predicted }) =>
        basis.some(({ driveline }) => driveline === id) ||
        predicted.some(({ drivelines }) => drivelines.some(({ driveline }) => driveline === id)),
    ) ||
    // Open objects: what they name is not known here, so any may name a part.
    [observations, runouts, balance].some((list) => list.length > 0)
  );
};

/** Whether anything of the case names a driveline or one of its parts, so that it has to stay. */
export const isNamed = (document: Case, id: string): boolean =>
  arePartsNamed(document, id) ||
  (document.gauging ?? []).some(({ driveline }) => driveline === id) ||
  (document.adjusters ?? []).some((one) => ofDriveline(one, id)) ||
  (document.states ?? []).some(({ driveline }) => driveline === id);

const hasReadings = ({ readings, headings = [], phasings = [] }: CaseGauging): boolean =>
  readings.length > 0 || headings.length > 0 || phasings.length > 0;

const ofDriveline = (adjuster: CaseAdjuster, id: string): boolean => "driveline" in adjuster && adjuster.driveline === id;
