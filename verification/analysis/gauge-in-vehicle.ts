import type { CaseHeading, CaseReading, VehicleSide } from "@halfturn/casefile";
import { radians, radiansToDegrees } from "@halfturn/engine/units";
import type { Placing } from "../gauging/simulate-gauging.js";
import { cross, dot, negative, type Vector } from "../kinematics/vectors.js";
import { shaftsOf, type TrueDriveline } from "./true-driveline.js";

/**
 * What a gauge held against a shaft from one side of the vehicle shows, and the words that a person writes down for it. All in degrees.
 * A gauge shows the fall of its line toward the reader's right, plus its zero; everything else follows from where things point.
 */
export interface GaugeInHand {
  readonly zeroDeg: number;
  readonly placing: Placing;
}

const UP: Vector = [0, 0, 1];

/** The way a reader's right hand points who stands on one side of the vehicle and looks toward its middle. */
const readersRight = (side: VehicleSide): Vector => cross(side === "left" ? [0, -1, 0] : [0, 1, 0], UP);

const degreesOf = (angle: number): number => radiansToDegrees(radians(angle));
const towardRight = (line: Vector, right: Vector): Vector => (dot(line, right) > 0 ? line : negative(line));
const fallToRight = (line: Vector, right: Vector): number => degreesOf(Math.asin(-dot(towardRight(line, right), UP)));

/** The end of a shaft that lies to the reader's right, or the other one. */
const endAt = (shaft: Vector, right: Vector, isRight: boolean): "driven-end" | "source-end" =>
  dot(shaft, right) > 0 === isRight ? "driven-end" : "source-end";

/** Where to hold the gauge. `at`: a place as a case file spells it. */
export type Spot =
  | { readonly kind: "along" | "face"; readonly at: string; readonly side: VehicleSide }
  | { readonly kind: "between"; readonly from: string; readonly to: string; readonly side: VehicleSide };

const directionAt = (truth: TrueDriveline, at: string): Vector =>
  truth.directions[shaftsOf(truth).indexOf(at.split(":")[0] as string)] as Vector;

/** How far the top of a face square to the shaft leans toward the reader's right. */
function leanToRight(shaft: Vector, right: Vector): number {
  const upTheFace = cross(cross(shaft, UP), shaft);
  const lean = Math.atan2(Math.hypot(upTheFace[0], upTheFace[1]), upTheFace[2]);
  return degreesOf(dot(upTheFace, right) > 0 ? lean : -lean);
}

/** One reading, as it would be written into a case file. */
export function readSpot(truth: TrueDriveline, spot: Spot, { zeroDeg, placing }: GaugeInHand): CaseReading {
  const right = readersRight(spot.side);
  const { side } = spot;
  if (spot.kind === "between") {
    const [from, to] = [directionAt(truth, spot.from), directionAt(truth, spot.to)];
    // Zeroed on the first: whatever the gauge's own zero is, it is gone.
    const shown = placing.round(placing.place(fallToRight(to, right)) - placing.place(fallToRight(from, right)));
    return { between: [spot.from, spot.to], deg: Math.abs(shown), lower: endAt(to, right, shown > 0), side };
  }
  const shaft = directionAt(truth, spot.at);
  const really = spot.kind === "face" ? leanToRight(shaft, right) : fallToRight(shaft, right);
  const shown = placing.round(placing.place(really + zeroDeg));
  const end = endAt(shaft, right, shown > 0);
  return spot.kind === "face"
    ? { at: spot.at, face: "square", deg: Math.abs(shown), topLeans: end, side }
    : { at: spot.at, deg: Math.abs(shown), lower: end, side };
}

/** The two readings of a turn-round check on a surface that falls by `slopeDeg` toward the right at first. */
export const turnRoundCheck = (slopeDeg: number, { zeroDeg, placing }: GaugeInHand) =>
  [slopeDeg, -slopeDeg].map((slope) => {
    const shown = placing.round(placing.place(slope + zeroDeg));
    return { deg: Math.abs(shown), lower: shown > 0 ? ("display-right" as const) : ("display-left" as const) };
  });

/** Plan-view direction of a shaft: by an offset over a distance, or as an angle from straight ahead. `error`: what is added to what is read, mm or degrees. */
export function readHeading(
  truth: TrueDriveline,
  shaft: string,
  how: { readonly overMm: number } | "angle",
  accuracy: number,
  error = 0,
): CaseHeading {
  const [x, y] = directionAt(truth, shaft);
  const left = (how === "angle" ? degreesOf(Math.atan2(y, Math.abs(x))) : how.overMm * y) + error;
  const toward = left > 0 ? "left" : "right";
  if (how === "angle") return { of: shaft, deg: Math.abs(left), toward, accuracyDeg: accuracy };
  return { of: shaft, lateralMm: Math.abs(left), toward, overMm: how.overMm, accuracyMm: accuracy };
}
