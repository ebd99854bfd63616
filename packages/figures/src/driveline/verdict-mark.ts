import type { Verdict } from "@halfturn/engine/analysis";
import type { Mark } from "../layout/label-blocks.js";
import { type Point, point } from "../svg/point.js";
import { circle, line, polygon, polyline } from "../svg/shapes.js";
import type { Theme } from "../theme.js";

const RADIUS = 6;
const ring = (c: Point, sides: number, turn: number, radius: number): Point[] =>
  Array.from({ length: sides }, (_, k) => {
    const angle = turn + (2 * Math.PI * k) / sides;
    return point(c.x + radius * Math.sin(angle), c.y - radius * Math.cos(angle));
  });

/** Each verdict has its own outline and its own sign inside, so that neither colour nor print can hide it. */
export function verdictMark(verdict: Verdict, theme: Theme): Mark {
  const sign = { stroke: theme.onMark, "stroke-width": 1.8, "stroke-linecap": "round" } as const;
  switch (verdict) {
    case "within":
      return (c) =>
        circle(c, RADIUS, { fill: theme.good }) +
        polyline([point(c.x - 2.8, c.y + 0.2), point(c.x - 0.8, c.y + 2.3), point(c.x + 3, c.y - 2.2)], {
          ...sign,
          "stroke-linejoin": "round",
        });
    case "over":
      return (c) =>
        polygon(ring(point(c.x, c.y + 1), 3, 0, RADIUS + 1.6), {
          fill: theme.bad,
          stroke: theme.bad,
          "stroke-width": 1,
          "stroke-linejoin": "round",
        }) +
        line(point(c.x, c.y - 2.2), point(c.x, c.y + 1.2), sign) +
        circle(point(c.x, c.y + 3.7), 1, { fill: theme.onMark });
    case "under":
      return (c) =>
        polygon(ring(point(c.x, c.y - 1), 3, Math.PI, RADIUS + 1.6), {
          fill: theme.low,
          stroke: theme.low,
          "stroke-width": 1,
          "stroke-linejoin": "round",
        }) + line(point(c.x - 2.2, c.y - 2), point(c.x + 2.2, c.y - 2), sign);
    case "uncertain":
      return (c) =>
        polygon(ring(c, 4, 0, RADIUS + 1), {
          fill: theme.background,
          stroke: theme.doubt,
          "stroke-width": 2.2,
          "stroke-linejoin": "round",
        }) + line(point(c.x - 2.2, c.y), point(c.x + 2.2, c.y), { stroke: theme.ink, "stroke-width": 1.8, "stroke-linecap": "round" });
    case "not-gauged":
      return (c) => circle(c, RADIUS - 0.8, { fill: "none", stroke: theme.muted, "stroke-width": 1.6, "stroke-dasharray": "2.6 2.2" });
    case "withheld":
      return (c) =>
        polygon(ring(c, 8, Math.PI / 8, RADIUS + 0.6), { fill: theme.muted }) +
        line(point(c.x - 2.8, c.y), point(c.x + 2.8, c.y), { ...sign, "stroke-width": 2.2 });
  }
}
