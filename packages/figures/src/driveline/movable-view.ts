import { type FigureOptions, sheetOf } from "../figure-options.js";
import { figureDocument } from "../svg/figure-document.js";
import { offset, type Point, point } from "../svg/point.js";
import { angleArc } from "./angle-arc.js";
import { drawDriveline } from "./draw-driveline.js";
import type { DrivelinePicture } from "./driveline-picture.js";
import { jointSentence } from "./joint-labels.js";
import { arrange, labelPlaces, placeList, roomFor } from "./labelled-places.js";
import { type PlacedShafts, placeShafts } from "./place-shafts.js";
import { jointPlaces } from "./places.js";
import { type Projection, project, twinFactor } from "./projection.js";
import { groundLine, SURROUNDINGS_HEIGHT } from "./surroundings.js";

/** A drawing whose joints and shaft ends can be taken hold of. Places and lengths in pixels of the drawing. */
export interface MovableView {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
  readonly start: Point;
  readonly joints: readonly Point[];
  readonly end: Point;
  /** By what factor angles are drawn larger; the same whatever was moved. */
  readonly factor: number;
  /** Pixels that a joint goes up for each metre; where the driveline is not to scale, for each equal unit of a section. */
  readonly pixelsPerMetre: number;
}

/** How far a joint can be moved before it leaves the room kept for it, in metres: more than any stack of spacers. */
export const MOVABLE_REACH = 0.04;
const ROOM = 84;
const TALLEST = 190;
const STEEPEST = Math.PI / 3;
const LIST_GAP = 8;

const largest = (slope: number): number => Math.min(STEEPEST, Math.max(-STEEPEST, slope));

/**
 * The driveline from the side with larger angles, joints raised by `rises` (metres, up positive, one for each joint) in a frame that the measured driveline sets, so
 * that what is not moved stays where it is. `moved` is the driveline with the analysis of the moved position; its source and driven shaft give the slopes of the ends.
 */
export function movableView(
  measured: DrivelinePicture,
  moved: DrivelinePicture,
  rises: readonly number[],
  options: FigureOptions,
): MovableView {
  const sheet = sheetOf(options);
  const { labels, left, right, narrow } = sheet;
  const still = project(measured, "side");
  const now = project(moved, "side");
  const room = (factor: number): PlacedShafts =>
    placeShafts(larger(still, factor), {
      left: left + 4,
      right,
      top: 0,
      tallest: TALLEST,
      stub: narrow ? 44 : 70,
      driven: narrow ? 48 : 70,
      clearance: ROOM,
      beyond: 20,
    });
  const factor = Math.max(1, Math.min(twinFactor(still, TALLEST / (right - left)), Math.floor(ROOM / (MOVABLE_REACH * room(1).scale))));
  const places = jointPlaces(moved, sheet);
  const arrangement = arrange(places, sheet, true);
  const around = roomFor(places, arrangement);
  const top = 14 + around.above;
  const frame = shifted(room(factor), top);
  const pixelsPerMetre = frame.scale * factor;
  const placed = raised(frame, rises, larger(now, factor), pixelsPerMetre);

  const drawn = drawDriveline(moved, placed, sheet.theme);
  const sizes = (k: number): number => 13 * (drawn.sizes[k] as number) + 2;
  const anchors = {
    upper: placed.joints.map(({ x, y }, k) => point(x, y - sizes(k))),
    lower: placed.joints.map(({ x, y }, k) => point(x, y + sizes(k))),
  };
  let y = frame.bottom + around.below;
  const labelled = labelPlaces(places, arrangement, { top: 14, under: frame.bottom, ...anchors }, sheet);
  const ground = groundLine(y, moved.runs, sheet);
  y += SURROUNDINGS_HEIGHT;
  const list = arrangement === "list" ? placeList(places, y + LIST_GAP, sheet) : null;
  const height = Math.ceil((list ? y + LIST_GAP + list.height : y) + 8);
  const svg = figureDocument(sheet, {
    title: labels.sideView,
    description: [`${labels.anglesLarger(factor)}.`, ...moved.driveline.joints.map((joint) => jointSentence(moved, joint, sheet))],
    height,
    body: [drawn.svg, arcs(placed, frame, sheet.theme), labelled, ground, list?.svg ?? ""],
  });
  return { svg, width: sheet.width, height, start: placed.start, joints: placed.joints, end: placed.end, factor, pixelsPerMetre };
}

const larger = (projection: Projection, factor: number): Projection => ({
  ...projection,
  slopes: projection.slopes.map((slope) => largest(slope * factor)),
});

function shifted(placed: PlacedShafts, by: number): PlacedShafts {
  const down = ({ x, y }: Point): Point => point(x, y + by);
  return {
    ...placed,
    start: down(placed.start),
    joints: placed.joints.map(down),
    end: down(placed.end),
    top: placed.top + by,
    bottom: placed.bottom + by,
  };
}

/** Every joint straight up by its rise; the sections follow from where the joints are, the ends keep their length. */
function raised(frame: PlacedShafts, rises: readonly number[], ends: Projection, pixelsPerMetre: number): PlacedShafts {
  const joints = frame.joints.map(({ x, y }, k) => point(x, y - (rises[k] ?? 0) * pixelsPerMetre));
  const n = joints.length;
  const first = ends.slopes[0] as number;
  const last = ends.slopes[n] as number;
  const between = joints.slice(1).map((to, k) => {
    const from = joints[k] as Point;
    return Math.atan2(from.y - to.y, to.x - from.x);
  });
  const reach = (from: Point | undefined, to: Point): number => Math.hypot((from?.x ?? 0) - to.x, (from?.y ?? 0) - to.y);
  return {
    ...frame,
    projection: { ...frame.projection, slopes: [first, ...between, last] },
    joints,
    start: offset(joints[0] as Point, first, -reach(frame.joints[0], frame.start)),
    end: offset(joints[n - 1] as Point, last, reach(frame.joints[n - 1], frame.end)),
  };
}

function arcs({ joints, end, projection }: PlacedShafts, { top, bottom }: PlacedShafts, theme: Parameters<typeof angleArc>[4]): string {
  const places = [...joints, end];
  return joints
    .map((joint, k) => {
      if (!projection.known[k] || !projection.known[k + 1]) return "";
      const next = places[k + 1] as Point;
      const room = { along: Math.hypot(next.x - joint.x, next.y - joint.y), above: joint.y - top, below: bottom - joint.y };
      return angleArc(joint, projection.slopes[k] as number, projection.slopes[k + 1] as number, room, theme);
    })
    .join("");
}
