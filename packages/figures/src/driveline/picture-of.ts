import { type Case, toDriveline } from "@halfturn/casefile";
import type { DrivelineAnalysis } from "@halfturn/engine/analysis";
import { type Metres, metres } from "@halfturn/engine/units";
import { catalogueOf, type Language, namesOf } from "@halfturn/words";
import type { DrivelinePicture } from "./driveline-picture.js";

const lengthOf = (millimetres: number | undefined): Metres | null => (millimetres === undefined ? null : metres(millimetres / 1000));

export interface PictureRequest {
  readonly case: Case;
  /** Index in `drivelines`. */
  readonly driveline: number;
  /** Index in `gauging` that the analysis is of; null where there is none. */
  readonly gauging: number | null;
  readonly analysis: DrivelineAnalysis | null;
  /** What source and pinion are called where the case does not say. */
  readonly language: Language;
}

/** What the figures draw from, for one driveline of a case. */
export function drivelinePictureOf({ case: document, driveline: index, gauging, analysis, language }: PictureRequest): DrivelinePicture {
  const driveline = toDriveline(document, index, gauging);
  const { runs, sections, joints, axle } = document.drivelines[index] as Case["drivelines"][number];
  const nameOf = namesOf(document, index, catalogueOf(language));
  const headings = gauging === null ? [] : (document.gauging?.[gauging]?.headings ?? []);
  return {
    driveline,
    analysis,
    runs,
    names: {
      source: nameOf("source"),
      driven: nameOf("driven"),
      sections: Object.fromEntries(sections.map(({ id }) => [id, nameOf(id)])),
    },
    supports: joints.flatMap(({ id, support }) =>
      support ? [{ joint: id, bearingIs: support.bearingIs ?? "source-side", bearingToJoint: lengthOf(support.bearingToJointMm) }] : [],
    ),
    axle: axle ? { centreToJoint: lengthOf(axle.centreToJointMm), jointAboveCentre: lengthOf(axle.jointAboveCentreMm) } : null,
    measuredHeadings: [...new Set(headings.map(({ of }) => of))],
  };
}
