import type { CaseDriveline, CaseGauging } from "@halfturn/casefile";
import type { AnalysisInput, DrivelineAnalysis } from "@halfturn/engine/analysis";
import { type Metres, metres } from "@halfturn/engine/units";
import type { DrivelinePicture } from "@halfturn/figures";
import type { NameOf } from "@halfturn/words";

const metresOf = (millimetres: number | undefined): Metres | null => (millimetres === undefined ? null : metres(millimetres / 1000));

interface Drawn {
  readonly driveline: CaseDriveline;
  readonly gauged: CaseGauging | null;
  readonly input: AnalysisInput;
  readonly analysis: DrivelineAnalysis;
  readonly nameOf: NameOf;
}

/** What the figures draw a gauged driveline from. */
export function pictureOf({ driveline, gauged, input, analysis, nameOf }: Drawn): DrivelinePicture {
  const { axle } = driveline;
  return {
    driveline: input.driveline,
    analysis,
    runs: driveline.runs,
    names: {
      source: nameOf("source"),
      driven: nameOf("driven"),
      sections: Object.fromEntries(driveline.sections.map(({ id }) => [id, nameOf(id)])),
    },
    supports: driveline.joints.flatMap(({ id, support }) =>
      support ? [{ joint: id, bearingIs: support.bearingIs ?? "source-side", bearingToJoint: metresOf(support.bearingToJointMm) }] : [],
    ),
    axle: axle ? { centreToJoint: metresOf(axle.centreToJointMm), jointAboveCentre: metresOf(axle.jointAboveCentreMm) } : null,
    measuredHeadings: [...new Set((gauged?.headings ?? []).map(({ of }) => of))],
  };
}
