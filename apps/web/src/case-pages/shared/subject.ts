import type { AnalysedDriveline, Case } from "@halfturn/casefile";
import { type DrivelinePicture, drivelinePictureOf } from "@halfturn/figures";
import { type Catalogue, catalogueOf, drivelineName, type NameOf, namesOf } from "@halfturn/words";
import type { Settings } from "../../device/settings.js";

/** One analysed driveline with its names and the words to say it in. */
export interface Subject extends AnalysedDriveline {
  readonly document: Case;
  /** Its place in `drivelines`. */
  readonly index: number;
  readonly name: string;
  readonly nameOf: NameOf;
  readonly catalogue: Catalogue;
  readonly picture: DrivelinePicture;
}

/** null where the document no longer has the driveline that was analysed: the newest result is still on its way. */
export function subjectOf(
  document: Case,
  analysed: AnalysedDriveline,
  { language, units }: Pick<Settings, "language" | "units">,
): Subject | null {
  const index = document.drivelines.findIndex(({ id }) => id === analysed.analysis.drivelineId);
  const driveline = document.drivelines[index];
  if (!driveline || !sameParts(driveline, analysed)) return null;
  const catalogue = catalogueOf(language, units);
  return {
    ...analysed,
    document,
    index,
    name: drivelineName(document, index, catalogue),
    nameOf: namesOf(document, index, catalogue),
    catalogue,
    picture: drivelinePictureOf({ case: document, driveline: index, gauging: analysed.gauging, analysis: analysed.analysis, language }),
  };
}

/** A joint may have been added since; names and drawings would not fit the result. */
const sameParts = ({ joints, sections }: Case["drivelines"][number], { input }: AnalysedDriveline): boolean =>
  joints.map(({ id }) => id).join() === input.driveline.joints.map(({ id }) => id).join() &&
  sections.map(({ id }) => id).join() === input.driveline.sections.map(({ id }) => id).join();
