import type { CaseCorrection } from "@halfturn/casefile";
import { type DrivelineAnalysis, type Estimate, estimateVerdict } from "@halfturn/engine/analysis";
import { degreesToRadians, radians } from "@halfturn/engine/units";
import { type DrivelinePicture, drivelinePictureOf } from "@halfturn/figures";
import type { CorrectedDriveline, CorrectionSubject, Foretold } from "./correction-subject.js";
import type { ReportedGauging } from "./report-input.js";

type Quantity = Foretold["of"]["equivalentAngleDeg"];

const angleOf = (quantity: Quantity): Estimate | null =>
  quantity && {
    value: degreesToRadians(quantity.value),
    u: degreesToRadians(quantity.u),
    low: degreesToRadians(quantity.interval95[0]),
    high: degreesToRadians(quantity.interval95[1]),
  };

/** What was gauged, as a picture. */
export const gaugedPicture = (
  { report }: CorrectionSubject,
  { index }: CorrectedDriveline,
  { gauging, analysis }: ReportedGauging,
): DrivelinePicture => drivelinePictureOf({ case: report.case, driveline: index, gauging, analysis, language: report.language });

/** How the driveline was foretold to stand, drawn as what it was worked out from; null where the record does not say how the shafts will lie. */
export function foretoldPicture(subject: CorrectionSubject, on: CorrectedDriveline, foretold: Foretold): DrivelinePicture | null {
  const { shafts } = foretold.of;
  if (!on.before || !shafts) return null;
  const picture = gaugedPicture(subject, on, on.before);
  const analysis: DrivelineAnalysis = {
    ...on.before.analysis,
    shafts: on.before.analysis.shafts.map(({ id }) => {
      const shaft = shafts.find((one) => one.id === id);
      return { id, inclination: angleOf(shaft?.inclinationDeg ?? null), heading: angleOf(shaft?.headingDeg ?? null) };
    }),
    joints: on.before.analysis.joints.map((joint) => {
      const operatingAngle = angleOf(foretold.of.joints.find(({ id }) => id === joint.id)?.operatingAngleDeg ?? null);
      return { ...joint, operatingAngle, verdict: estimateVerdict(operatingAngle, joint) };
    }),
  };
  return { ...picture, analysis, driveline: { ...picture.driveline, sections: turned(picture.driveline.sections, subject, on) } };
}

type Sections = DrivelinePicture["driveline"]["sections"];

/** The sections with the phasings that the correction gives them. */
function turned(sections: Sections, { report, record }: CorrectionSubject, { driveline }: CorrectedDriveline): Sections {
  const turnOf = ({ adjuster: id, amount }: CaseCorrection["changes"][number], section: string): number => {
    const adjuster = report.case.adjusters?.find((one) => one.id === id);
    const here = adjuster?.kind === "rephase" && adjuster.driveline === driveline.id && adjuster.section === section;
    return here ? (amount * 2 * Math.PI) / adjuster.splineTeeth : 0;
  };
  return sections.map((section) => {
    const turn = record.changes.reduce((sum, change) => sum + turnOf(change, section.id), 0);
    return section.phasing === null || turn === 0 ? section : { ...section, phasing: radians(section.phasing + turn) };
  });
}
