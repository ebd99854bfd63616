import { type Attributes, coordinate, element } from "./element.js";
import type { Point } from "./point.js";

const at = ({ x, y }: Point): string => `${coordinate(x)} ${coordinate(y)}`;

export const line = (a: Point, b: Point, style: Attributes): string => element("path", { d: `M${at(a)}L${at(b)}`, fill: "none", ...style });

export const polyline = (points: readonly Point[], style: Attributes): string =>
  points.length < 2 ? "" : element("path", { d: `M${points.map(at).join("L")}`, fill: "none", ...style });

export const polygon = (points: readonly Point[], style: Attributes): string =>
  points.length < 3 ? "" : element("path", { d: `M${points.map(at).join("L")}Z`, ...style });

export const circle = (centre: Point, radius: number, style: Attributes): string =>
  element("circle", { cx: centre.x, cy: centre.y, r: radius, ...style });

/** From one place to another round a circle, the short way; `clockwise` as seen on the sheet. */
export const arc = (from: Point, to: Point, radius: number, clockwise: boolean, style: Attributes): string =>
  element("path", {
    d: `M${at(from)}A${coordinate(radius)} ${coordinate(radius)} 0 0 ${clockwise ? 1 : 0} ${at(to)}`,
    fill: "none",
    ...style,
  });

/** A filled arrow head with its tip at `tip`, pointing from `from`. */
export function arrowHead(from: Point, tip: Point, size: number, fill: string): string {
  const length = Math.hypot(tip.x - from.x, tip.y - from.y) || 1;
  const ux = (tip.x - from.x) / length;
  const uy = (tip.y - from.y) / length;
  const back = { x: tip.x - ux * size, y: tip.y - uy * size };
  const half = size * 0.42;
  return polygon([tip, { x: back.x - uy * half, y: back.y + ux * half }, { x: back.x + uy * half, y: back.y - ux * half }], { fill });
}
