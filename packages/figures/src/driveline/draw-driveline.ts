import type { Joint } from "@halfturn/engine/kinematics";
import { distance, offset, type Point, point } from "../svg/point.js";
import type { Theme } from "../theme.js";
import type { DrivelinePicture } from "./driveline-picture.js";
import { type JointDrawing, jointReach, jointSymbol } from "./joint-symbol.js";
import type { PlacedShafts } from "./place-shafts.js";
import { axleHousing, sourceHousing, supportBearing, tube } from "./shaft-parts.js";

const LEAST_SIZE = 0.3;
const TUBE_HALF = 5.5;
/** A bearing nearer to its joint than this would hide behind the yoke. */
const BEARING_NEAREST = 29;

/** Size of each joint's symbol: full where its shafts are long enough, smaller where joints stand close. */
export function jointSizes({ joints, start, end }: PlacedShafts, kinds: readonly Joint[]): readonly number[] {
  const places = [start, ...joints, end];
  return joints.map((_, k) => {
    const room = Math.min(distance(places[k] as Point, places[k + 1] as Point), distance(places[k + 1] as Point, places[k + 2] as Point));
    return Math.min(1, Math.max(LEAST_SIZE, room / (2.3 * jointReach((kinds[k] as Joint).kind))));
  });
}

/** Turn of the driving yoke of each joint, carried along the chain by the phasings; the first stands upright. */
function yokeTurns({ driveline }: DrivelinePicture, upright: number): readonly number[] {
  let turn = upright;
  return driveline.joints.map(({ kind }, k) => {
    const here = turn;
    const crossed = kind === "cross" ? Math.PI / 2 : 0;
    turn = here + crossed + (driveline.sections[k]?.phasing ?? 0);
    return here;
  });
}

export interface DrawnDriveline {
  readonly svg: string;
  readonly bearings: readonly Point[];
  readonly sizes: readonly number[];
}

/** Shafts, joints, support bearings, source and axle at their places. */
export function drawDriveline(picture: DrivelinePicture, placed: PlacedShafts, theme: Theme): DrawnDriveline {
  const { driveline, supports } = picture;
  const { joints, start, end, scale, projection } = placed;
  const { slopes, known, view, toScale } = projection;
  const n = joints.length;
  const sizes = jointSizes(placed, driveline.joints);
  const reach = (k: number): number => jointReach((driveline.joints[k] as Joint).kind) * (sizes[k] as number);
  const turns = yokeTurns(picture, view === "side" ? 0 : Math.PI / 2);

  const shafts = driveline.sections.map((_, k) => {
    const slope = slopes[k + 1] as number;
    const long = distance(joints[k] as Point, joints[k + 1] as Point);
    const half = TUBE_HALF * Math.max(0.5, Math.min(1, long / 60));
    return tube(
      offset(joints[k] as Point, slope, reach(k)),
      offset(joints[k + 1] as Point, slope, -reach(k + 1)),
      half,
      known[k + 1] as boolean,
      theme,
    );
  });
  const ends =
    sourceHousing(start, slopes[0] as number, distance(start, joints[0] as Point) - reach(0), known[0] as boolean, theme) +
    axleHousing(offset(joints[n - 1] as Point, slopes[n] as number, reach(n - 1)), end, view, known[n] as boolean, theme);

  const bearings = supports.flatMap(({ joint, bearingIs, bearingToJoint }) => {
    const k = driveline.joints.findIndex(({ id }) => id === joint);
    const shaft = bearingIs === "source-side" ? k : k + 1;
    if (k < 0 || shaft < 1 || shaft >= n) return [];
    const long = distance(joints[shaft - 1] as Point, joints[shaft] as Point);
    const wanted = toScale && bearingToJoint !== null ? bearingToJoint * scale : 0;
    const along = Math.min(long / 2, Math.max(BEARING_NEAREST * (sizes[k] as number), wanted));
    const slope = slopes[shaft] as number;
    const at = offset(joints[k] as Point, slope, bearingIs === "source-side" ? -along : along);
    return [{ at, svg: supportBearing(at, slope, view, theme) }];
  });

  const symbols = driveline.joints.map(({ kind }, k) => {
    const unknownPhasing = driveline.sections.slice(0, k).some(({ phasing }) => phasing === null);
    const drawing: JointDrawing = {
      kind,
      centre: joints[k] as Point,
      slopeIn: slopes[k] as number,
      slopeOut: slopes[k + 1] as number,
      size: sizes[k] as number,
      turn: turns[k] as number,
      dashed: unknownPhasing,
    };
    return jointSymbol(drawing, theme);
  });
  return {
    svg: ends + shafts.join("") + bearings.map(({ svg }) => svg).join("") + symbols.join(""),
    bearings: bearings.map(({ at }) => point(at.x, at.y)),
    sizes,
  };
}
