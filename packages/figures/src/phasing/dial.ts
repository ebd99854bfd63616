import { degreesToRadians } from "@halfturn/engine/units";
import { type Point, point } from "../svg/point.js";
import { arc, arrowHead, circle, line } from "../svg/shapes.js";
import type { Theme } from "../theme.js";

export const DIAL_RADIUS = 54;

/** A section seen along its axis, from the source: angles clockwise from the source-end yoke, which stands upright. Radians. */
export interface Dial {
  readonly centre: Point;
  readonly phasing: number | null;
  /** Else the driven-end yoke is drawn dashed. */
  readonly measured: boolean;
  /** Where the driven-end yoke would leave least, if that is elsewhere. */
  readonly best: number | null;
}

/** A place on the dial at a clockwise angle from upright. */
const on = (centre: Point, angle: number, radius: number): Point =>
  point(centre.x + radius * Math.sin(angle), centre.y - radius * Math.cos(angle));

const EAR = 6.5;
/** Below this an arc between the yokes would hide behind them. */
const SMALLEST_ARC = degreesToRadians(40);

export interface YokeStyle {
  readonly stroke: string;
  readonly width: number;
  readonly fill: string;
  readonly dashed?: boolean;
}

/** A yoke seen end-on: a bar through the centre with an ear at each end. */
export function yokeBar(centre: Point, angle: number, reach: number, { stroke, width, fill, dashed }: YokeStyle): string {
  const dash = dashed ? { "stroke-dasharray": "4 3" } : {};
  const ends = [angle, angle + Math.PI].map((a) => on(centre, a, reach));
  const bar = line(on(centre, angle, reach - EAR), on(centre, angle + Math.PI, reach - EAR), { stroke, "stroke-width": width, ...dash });
  return bar + ends.map((end) => circle(end, EAR, { fill, stroke, "stroke-width": 2.2, ...dash })).join("");
}

export const sourceYokeStyle = (theme: Theme): YokeStyle => ({ stroke: theme.sourceYoke, width: 3, fill: theme.sourceYoke });
export const drivenYokeStyle = (theme: Theme): YokeStyle => ({ stroke: theme.drivenYoke, width: 7, fill: theme.background });
export const bestYokeStyle = (theme: Theme): YokeStyle => ({ stroke: theme.muted, width: 1.6, fill: "none", dashed: true });

/** The driven-end yoke lies farther off and is drawn first, broad and hollow-eared; the source-end yoke on top of it, narrow and solid. */
export function drawDial({ centre, phasing, measured, best }: Dial, theme: Theme): string {
  const face = circle(centre, DIAL_RADIUS, { fill: theme.tube, stroke: theme.faint, "stroke-width": 1.5 });
  const ticks = Array.from({ length: 12 }, (_, k) => {
    const angle = (k * Math.PI) / 6;
    return line(on(centre, angle, DIAL_RADIUS - (k % 3 === 0 ? 6 : 3)), on(centre, angle, DIAL_RADIUS), {
      stroke: theme.muted,
      "stroke-width": 1.2,
    });
  });
  const ghost = best === null ? "" : yokeBar(centre, best, DIAL_RADIUS - 12, bestYokeStyle(theme));
  const driven = phasing === null ? "" : yokeBar(centre, phasing, DIAL_RADIUS - 12, { ...drivenYokeStyle(theme), dashed: !measured });
  const source = yokeBar(centre, 0, DIAL_RADIUS - 26, sourceYokeStyle(theme));
  const sweep = phasing !== null && Math.abs(phasing) > SMALLEST_ARC ? turnArrow(centre, phasing, theme) : "";
  return face + ticks.join("") + ghost + driven + source + sweep + circle(centre, 4, { fill: theme.ink });
}

function turnArrow(centre: Point, phasing: number, theme: Theme): string {
  const radius = 18;
  const way = Math.sign(phasing);
  const tip = on(centre, phasing - way * 0.16, radius);
  const before = on(centre, phasing - way * 0.42, radius);
  const from = on(centre, way * 0.16, radius);
  const style = { stroke: theme.ink, "stroke-width": 1.6 };
  return arc(from, before, radius, way > 0, style) + arrowHead(before, tip, 7, theme.ink);
}
