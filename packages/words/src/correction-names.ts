import type { Case } from "@halfturn/casefile";
import { drivelineName, namesOf } from "./case-names.js";
import type { Catalogue } from "./catalogue.js";
import type { CorrectionNames } from "./correction-reader.js";

/** The names of a case, with an id standing for itself where it has no label. */
export function correctionNames(document: Case, catalogue: Catalogue): CorrectionNames {
  const at = (id: string | undefined): number => document.drivelines.findIndex((driveline) => driveline.id === id);
  const having = (part: string): number =>
    document.drivelines.findIndex(({ sections, joints }) => [...sections, ...joints].some(({ id }) => id === part));
  return {
    adjuster: (id) => document.adjusters?.find((adjuster) => adjuster.id === id)?.label ?? id,
    state: (id) => document.states?.find((state) => state.id === id)?.label ?? (id === "as-gauged" ? catalogue.correction.asGauged : id),
    driveline: (id) => (at(id) < 0 ? id : drivelineName(document, at(id), catalogue)),
    part: (id, driveline) => namesOf(document, Math.max(0, driveline === undefined ? having(id) : at(driveline)), catalogue)(id),
  };
}
