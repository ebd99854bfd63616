import { degreesToRadians } from "@halfturn/engine/units";
import { offset, type Point } from "../svg/point.js";
import { arc, line } from "../svg/shapes.js";
import type { Theme } from "../theme.js";

/** Below this drawn angle both lines would run inside the tube. */
const SMALLEST = degreesToRadians(5);
const SHORTEST = 28;
const LONGEST = 84;
const BEYOND = 12;

/** Free pixels along the driven shaft, and above and below the joint. */
export interface ArcRoom {
  readonly along: number;
  readonly above: number;
  readonly below: number;
}

/** The driving shaft carried on beyond its joint, the driven shaft's own line, and the angle between them. */
export function angleArc(centre: Point, slopeIn: number, slopeOut: number, { along, above, below }: ArcRoom, theme: Theme): string {
  const rise = Math.sin(slopeIn);
  const tallest = (rise > 0 ? above : below) / Math.max(Math.abs(rise), 1e-9);
  const radius = Math.min(LONGEST, along * 0.6, tallest - BEYOND);
  if (Math.abs(slopeOut - slopeIn) < SMALLEST || radius < SHORTEST) return "";
  const style = { stroke: theme.low, "stroke-width": 1.6 } as const;
  return (
    line(offset(centre, slopeIn, 22), offset(centre, slopeIn, radius + BEYOND), { ...style, "stroke-dasharray": "5 3" }) +
    line(offset(centre, slopeOut, 22), offset(centre, slopeOut, radius + 6), { ...style, "stroke-width": 1.2 }) +
    arc(offset(centre, slopeIn, radius), offset(centre, slopeOut, radius), radius, slopeOut < slopeIn, style)
  );
}
