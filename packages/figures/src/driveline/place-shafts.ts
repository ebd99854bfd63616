import { offset, type Point, point } from "../svg/point.js";
import type { Projection } from "./projection.js";

/** Where everything comes to lie on the sheet. */
export interface PlacedShafts {
  readonly projection: Projection;
  /** Left end of the source shaft. */
  readonly start: Point;
  readonly joints: readonly Point[];
  /** Axle centre, or the end of the driven shaft. */
  readonly end: Point;
  /** Pixels to a unit of `runs`. */
  readonly scale: number;
  readonly top: number;
  readonly bottom: number;
}

interface Room {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  /** Height that the joints may take at most; a tall driveline is drawn smaller. */
  readonly tallest: number;
  readonly stub: number;
  /** Length of the driven shaft where its true one is not known. */
  readonly driven: number;
  /** Room for what is drawn round the centre lines. */
  readonly clearance: number;
  /** Room for the axle beyond its centre. */
  readonly beyond: number;
}

/** Fits a projected driveline into the room: as wide as it goes, its top edge at `top`. */
export function placeShafts(projection: Projection, room: Room): PlacedShafts {
  const { slopes, runs, axleRun } = projection;
  const first = slopes[0] as number;
  const last = slopes[slopes.length - 1] as number;
  const total = runs.reduce((sum, run) => sum + run, 0) + (axleRun ?? 0);
  const wide = room.right - room.left - room.stub * Math.cos(first) - (axleRun === null ? room.driven * Math.cos(last) : 0) - room.beyond;
  const rises = [0];
  runs.forEach((run, k) => {
    rises.push((rises[k] as number) + run * Math.tan(slopes[k + 1] as number));
  });
  const rise = Math.max(...rises) - Math.min(...rises);
  const byWidth = total > 0 ? wide / total : 1;
  const scale = rise > 0 ? Math.min(byWidth, room.tallest / rise) : byWidth;

  const spare = Math.max(0, wide - (total > 0 ? scale * total : 0));
  let at = point(room.left + spare / 2 + room.stub * Math.cos(first), 0);
  const joints = [at];
  runs.forEach((run, k) => {
    at = point(at.x + scale * run, at.y - scale * run * Math.tan(slopes[k + 1] as number));
    joints.push(at);
  });
  const start = offset(joints[0] as Point, first, -room.stub);
  const drivenLength = axleRun === null ? room.driven : (scale * axleRun) / Math.cos(last);
  const end = offset(at, last, drivenLength);
  const ys = [start, ...joints, end].map(({ y }) => y);
  const shift = room.top + room.clearance - Math.min(...ys);
  const down = ({ x, y }: Point): Point => point(x, y + shift);
  return {
    projection,
    start: down(start),
    joints: joints.map(down),
    end: down(end),
    scale,
    top: room.top,
    bottom: room.top + 2 * room.clearance + Math.max(...ys) - Math.min(...ys),
  };
}
