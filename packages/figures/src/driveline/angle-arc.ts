import { arc, line } from "../svg/shapes.js";
import { offset, type Point } from "../svg/point.js";
import type { Theme } from "../theme.js";

/** Below this drawn angle an arc would be a blot. */
const SMALLEST = (1.5 * Math.PI) / 180;
const SHORTEST = 40;
const LONGEST = 84;

/** The driving shaft carried on beyond its joint, the driven shaft's own line, and the angle between them. */
export function angleArc(centre: Point, slopeIn: number, slopeOut: number, room: number, theme: Theme): string {
  const radius = Math.min(LONGEST, room * 0.6);
  if (Math.abs(slopeOut - slopeIn) < SMALLEST || radius < SHORTEST) return "";
  const style = { stroke: theme.low, "stroke-width": 1.6 } as const;
  return (
    line(offset(centre, slopeIn, 22), offset(centre, slopeIn, radius + 12), { ...style, "stroke-dasharray": "5 3" }) +
    line(offset(centre, slopeOut, 22), offset(centre, slopeOut, radius + 6), { ...style, "stroke-width": 1.2 }) +
    arc(offset(centre, slopeIn, radius), offset(centre, slopeOut, radius), radius, slopeOut < slopeIn, style)
  );
}
