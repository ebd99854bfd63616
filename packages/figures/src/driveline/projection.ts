import { directionOf } from "@halfturn/engine/geometry";
import { degreesToRadians, type Radians } from "@halfturn/engine/units";
import { type DrivelinePicture, estimatedPoses } from "./driveline-picture.js";

export type View = "side" | "plan";

/** A driveline projected on the picture plane: slopes upward positive (side: Z up; plan: chain +Y up), runs along the picture's horizontal. */
export interface Projection {
  readonly view: View;
  /** One for each shaft, in power order. */
  readonly slopes: readonly number[];
  /** Whether the slope was measured; else it is drawn dashed. */
  readonly known: readonly boolean[];
  /** One for each section: horizontal share of its length, in metres or in equal units. */
  readonly runs: readonly number[];
  readonly toScale: boolean;
  /** Horizontal run from the last joint to the axle centre, where known and to scale. */
  readonly axleRun: number | null;
}

/** Steeper than this nothing is drawn: a driveline never is, a slip of the pen may be. */
const STEEPEST = Math.PI / 3;
const limited = (slope: number): number => Math.min(STEEPEST, Math.max(-STEEPEST, slope));
const usableLength = (length: number | null | undefined): length is number =>
  typeof length === "number" && Number.isFinite(length) && length > 0;

export function project(picture: DrivelinePicture, view: View): Projection {
  const { driveline, measuredHeadings, axle } = picture;
  const poses = estimatedPoses(picture);
  const ids = ["source", ...driveline.sections.map(({ id }) => id), "driven"];
  const directions = poses.map(({ inclination, heading }) =>
    directionOf({ inclination: inclination ?? (0 as Radians), heading: heading ?? (0 as Radians) }),
  );
  const slopes = directions.map(({ x, y, z }) => limited(Math.atan2(view === "side" ? z : y, x)));
  const known = poses.map(({ inclination, heading }, k) =>
    view === "side" ? inclination !== null : heading !== null && measuredHeadings.includes(ids[k] as string),
  );
  const lengths = driveline.sections.map(({ length }) => length);
  const toScale = lengths.length > 0 && lengths.every(usableLength);
  const forwardShare = (shaft: number): number => Math.max(0.2, directions[shaft]?.x ?? 1);
  return {
    view,
    slopes,
    known,
    runs: lengths.map((length, k) => (toScale ? (length as number) : 1) * forwardShare(k + 1)),
    toScale,
    axleRun: toScale && usableLength(axle?.centreToJoint) ? axle.centreToJoint * forwardShare(poses.length - 1) : null,
  };
}

const FACTORS = [20, 15, 12, 10, 8, 6, 5, 4, 3, 2];
/** Beyond this drawn slope a magnified picture stops looking like a driveline. */
const STEEPEST_TWIN = degreesToRadians(30);

/** Height over width that a driveline's joints would take with its slopes multiplied. */
function aspect({ slopes, runs }: Projection, factor: number): number {
  let [at, low, high, wide] = [0, 0, 0, 0];
  runs.forEach((run, k) => {
    at += run * Math.tan(limited((slopes[k + 1] as number) * factor));
    wide += run;
    low = Math.min(low, at);
    high = Math.max(high, at);
  });
  return wide > 0 ? (high - low) / wide : 0;
}

/**
 * By what factor the angles of the twin are drawn larger; 1 when they are plain enough as they are, or when there is nothing to magnify.
 * `tallest`: height over width that it may take, so that it need not be drawn smaller than the picture above it.
 */
export function twinFactor(projection: Projection, tallest: number): number {
  const steepest = Math.max(...projection.slopes.map(Math.abs));
  if (steepest < 1e-4) return 1;
  const gentle = FACTORS.filter((factor) => factor * steepest <= STEEPEST_TWIN);
  return gentle.find((factor) => aspect(projection, factor) <= tallest) ?? gentle.at(-1) ?? 1;
}

/** The same driveline with every slope multiplied; the runs stay, so that joints stand under one another in both pictures. */
export const magnified = (projection: Projection, factor: number): Projection => ({
  ...projection,
  slopes: projection.slopes.map((slope) => limited(slope * factor)),
});
