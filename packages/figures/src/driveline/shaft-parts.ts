import { distance, offset, type Point, point } from "../svg/point.js";
import { circle, line, polygon } from "../svg/shapes.js";
import type { Theme } from "../theme.js";
import type { View } from "./projection.js";

const outline = (theme: Theme, known: boolean) =>
  ({
    stroke: known ? theme.ink : theme.muted,
    "stroke-width": 1.7,
    "stroke-linejoin": "round",
    ...(known ? {} : { "stroke-dasharray": "6 4" }),
  }) as const;

/** A tube between two places; dashed where its direction was not measured. */
export function tube(from: Point, to: Point, half: number, known: boolean, theme: Theme): string {
  if (distance(from, to) < 0.5) return "";
  const slope = Math.atan2(from.y - to.y, to.x - from.x);
  return polygon([offset(from, slope, 0, half), offset(to, slope, 0, half), offset(to, slope, 0, -half), offset(from, slope, 0, -half)], {
    fill: theme.tube,
    ...outline(theme, known),
  });
}

/** The output of the transmission or transfer case: a tail housing and its shaft. */
export function sourceHousing(start: Point, slope: number, reach: number, known: boolean, theme: Theme): string {
  const housing = reach * 0.55;
  return (
    tube(offset(start, slope, housing), offset(start, slope, reach), 4, known, theme) +
    polygon(
      [
        offset(start, slope, 0, 15),
        offset(start, slope, housing * 0.5, 13),
        offset(start, slope, housing, 8),
        offset(start, slope, housing, -8),
        offset(start, slope, housing * 0.5, -13),
        offset(start, slope, 0, -15),
      ],
      { fill: theme.tube, ...outline(theme, known) },
    )
  );
}

/** Pinion nose and axle: the tube end-on from the side, lengthwise from above. */
export function axleHousing(flange: Point, end: Point, view: View, known: boolean, theme: Theme): string {
  const slope = Math.atan2(flange.y - end.y, end.x - flange.x);
  const reach = distance(flange, end);
  const radius = axleRadius(reach);
  const style = { fill: theme.tube, ...outline(theme, known) };
  const nose = polygon(
    [offset(flange, slope, 0, 5), offset(end, slope, 0, radius * 0.9), offset(end, slope, 0, -radius * 0.9), offset(flange, slope, 0, -5)],
    style,
  );
  if (view === "side") {
    return nose + circle(end, radius, style) + circle(end, radius * 0.42, { fill: theme.background, ...outline(theme, known) });
  }
  const across = [
    point(end.x - 6, end.y - AXLE_HALF),
    point(end.x + 6, end.y - AXLE_HALF),
    point(end.x + 6, end.y + AXLE_HALF),
    point(end.x - 6, end.y + AXLE_HALF),
  ];
  return polygon(across, style) + nose + circle(end, radius, style);
}

/** Half of the axle tube as drawn from above. */
export const AXLE_HALF = 30;

export const axleRadius = (reach: number): number => Math.max(7, Math.min(17, reach * 0.4));

/** A support bearing round a shaft: hung from a crossmember as seen from the side, held between brackets as seen from above. */
export function supportBearing(at: Point, slope: number, view: View, theme: Theme): string {
  const stroke = { stroke: theme.ink, "stroke-width": 1.7, "stroke-linejoin": "round" } as const;
  const block = polygon([offset(at, slope, -5, 9.5), offset(at, slope, 5, 9.5), offset(at, slope, 5, -9.5), offset(at, slope, -5, -9.5)], {
    fill: theme.background,
    ...stroke,
  });
  const race = polygon([offset(at, slope, -5, 5), offset(at, slope, 5, 5), offset(at, slope, 5, -5), offset(at, slope, -5, -5)], {
    fill: theme.ink,
  });
  const bracket = (side: 1 | -1): string => {
    const plate = at.y - side * 21;
    const near = at.y - side * 9.5;
    return (
      line(point(at.x, near), point(at.x, plate), stroke) +
      line(point(at.x - 11, plate), point(at.x + 11, plate), { ...stroke, "stroke-width": 2.4 }) +
      [-8, -2, 4]
        .map((x) => line(point(at.x + x, plate), point(at.x + x + 4, plate - side * 4), { stroke: theme.muted, "stroke-width": 1.2 }))
        .join("")
    );
  };
  return block + race + bracket(1) + (view === "plan" ? bracket(-1) : "");
}
