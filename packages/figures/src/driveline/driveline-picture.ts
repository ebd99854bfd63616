import type { DrivelineAnalysis } from "@halfturn/engine/analysis";
import type { ShaftPose } from "@halfturn/engine/geometry";
import type { Driveline } from "@halfturn/engine/kinematics";
import type { Metres, Radians } from "@halfturn/engine/units";
import { usable } from "../estimate-text.js";

/** A support bearing beside a joint. */
export interface SupportPicture {
  readonly joint: string;
  readonly bearingIs: "source-side" | "driven-side";
  readonly bearingToJoint: Metres | null;
}

/** The axle behind the driven flange. */
export interface AxlePicture {
  readonly centreToJoint: Metres | null;
  readonly jointAboveCentre: Metres | null;
}

/** A driveline, what was found out about it, and what its parts are called: all that the figures draw from. */
export interface DrivelinePicture {
  readonly driveline: Driveline;
  readonly analysis: DrivelineAnalysis | null;
  readonly runs: "rearward" | "forward";
  readonly names: { readonly source: string; readonly driven: string; readonly sections: Readonly<Record<string, string>> };
  readonly supports: readonly SupportPicture[];
  readonly axle: AxlePicture | null;
  /** Ids of the shafts whose plan-view direction was measured. */
  readonly measuredHeadings: readonly string[];
}

/** The name of a shaft by its place in power order, 0 = source. */
export function shaftName({ driveline, names }: DrivelinePicture, shaft: number): string {
  if (shaft === 0) return names.source;
  const section = driveline.sections[shaft - 1];
  return section ? (names.sections[section.id] ?? section.id) : names.driven;
}

const NO_ANGLE = 0 as Radians;

/** The best estimates of how the shafts lie; an unknown angle is null. */
export function estimatedPoses({
  driveline,
  analysis,
}: DrivelinePicture): readonly { inclination: Radians | null; heading: Radians | null }[] {
  return Array.from({ length: driveline.joints.length + 1 }, (_, k) => {
    const shaft = analysis?.shafts[k];
    return {
      inclination: usable(shaft?.inclination) ? (shaft.inclination.value as Radians) : null,
      heading: usable(shaft?.heading) ? (shaft.heading.value as Radians) : null,
    };
  });
}

/** Poses for mathematics: null unless every inclination is known; an unknown heading is straight ahead, as in the analysis. */
export function knownPoses(picture: DrivelinePicture): readonly ShaftPose[] | null {
  const poses: ShaftPose[] = [];
  for (const { inclination, heading } of estimatedPoses(picture)) {
    if (inclination === null) return null;
    poses.push({ inclination, heading: heading ?? NO_ANGLE });
  }
  return poses;
}
