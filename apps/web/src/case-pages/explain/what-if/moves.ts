import type { PoseModel } from "@halfturn/engine/gauging";
import type { Driveline } from "@halfturn/engine/kinematics";
import type { Radians } from "@halfturn/engine/units";

/** What was moved by hand in the drawing, against as gauged. */
export interface Moves {
  /** One for each joint, metres, up positive. */
  readonly rises: readonly number[];
  /** Added to the inclination of the source and of the driven shaft, radians: positive lowers the driven end. */
  readonly sourceTilt: number;
  readonly drivenTilt: number;
}

/** A section whose length was not measured is taken as this long, metres; the drawing gives every section one unit then. */
export const ASSUMED_LENGTH = 1;

export const unmoved = (joints: number): Moves => ({ rises: Array.from({ length: joints }, () => 0), sourceTilt: 0, drivenTilt: 0 });

export const isMoved = ({ rises, sourceTilt, drivenTilt }: Moves): boolean =>
  sourceTilt !== 0 || drivenTilt !== 0 || rises.some((rise) => rise !== 0);

/**
 * How the shafts lie with joint centres moved up and down and the end shafts tilted about their joints. The source and the driven shaft keep their inclination
 * while their joint moves; a section turns toward where its ends are, its slip spline takes up the length. Errors stay what the readings left.
 */
export function movedPoses(model: PoseModel, { sections }: Driveline, { rises, sourceTilt, drivenTilt }: Moves): PoseModel {
  const last = model.inclination.length - 1;
  return {
    ...model,
    inclination: model.inclination.map((inclination, shaft) => {
      if (inclination === null) return null;
      if (shaft === 0) return (inclination + sourceTilt) as Radians;
      if (shaft === last) return (inclination + drivenTilt) as Radians;
      const length = sections[shaft - 1]?.length ?? ASSUMED_LENGTH;
      const rise = (rises[shaft] ?? 0) - (rises[shaft - 1] ?? 0);
      if (rise === 0) return inclination;
      return Math.atan2(length * Math.sin(inclination) - rise, length * Math.cos(inclination)) as Radians;
    }),
  };
}
