import { offset, type Point } from "../svg/point.js";
import { circle, polyline } from "../svg/shapes.js";
import type { Theme } from "../theme.js";

/** Reach of a yoke from the joint's centre to where its tube begins, in pixels at size 1. */
export const YOKE_REACH = 17;
const EAR = 9.5;

/** A yoke seen from the side. */
export interface Yoke {
  /** Joint centre. */
  readonly centre: Point;
  /** Direction in which its shaft leaves the joint, radians upward positive. */
  readonly slope: number;
  readonly size: number;
  /** How much of the fork shows: 1 = both ears, 0 = edge on. */
  readonly opening: number;
  readonly dashed?: boolean;
}

/** A fork with an ear at each end, narrowing to a single boss as it turns edge on. */
export function drawYoke({ centre, slope, size, opening, dashed }: Yoke, theme: Theme): string {
  const at = (along: number, across: number): Point => offset(centre, slope, along * size, across * size);
  const half = EAR * Math.max(0, Math.min(1, opening));
  const stroke = {
    stroke: theme.ink,
    "stroke-width": 2.2 * Math.max(0.7, size),
    "stroke-linejoin": "round",
    "stroke-linecap": "round",
  } as const;
  const dash = dashed ? { "stroke-dasharray": "3 3" } : {};
  if (half < 3.2) {
    const body = [at(YOKE_REACH, 4), at(4, 3.2), at(4, -3.2), at(YOKE_REACH, -4)];
    return (
      polyline(body, { ...stroke, ...dash, fill: theme.tube }) +
      circle(centre, 5.2 * size, { fill: theme.tube, stroke: theme.ink, "stroke-width": 2 })
    );
  }
  const shoulder = 8.5;
  const fork = [
    at(0, half),
    at(shoulder - 1, half),
    at(shoulder + 3, half * 0.75),
    at(YOKE_REACH, 4),
    at(YOKE_REACH, -4),
    at(shoulder + 3, -half * 0.75),
    at(shoulder - 1, -half),
    at(0, -half),
  ];
  const ears = [at(0, half), at(0, -half)].map((ear) =>
    circle(ear, 2.6 * size, { fill: theme.background, stroke: theme.ink, "stroke-width": 1.8 }),
  );
  return polyline(fork, { ...stroke, ...dash }) + ears.join("");
}
