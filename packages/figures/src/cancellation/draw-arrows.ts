import type { Sheet } from "../figure-options.js";
import { distance, type Point, point } from "../svg/point.js";
import { arrowHead, circle, line } from "../svg/shapes.js";
import { type Box, SMALL_TEXT, text } from "../svg/text.js";
import { fitText, textWidth } from "../svg/text-width.js";
import type { Arrow, ArrowPath } from "./arrow-path.js";
import { placeBoxes } from "./place-boxes.js";

export interface DrawnArrows {
  readonly svg: string;
  readonly bottom: number;
}

const HEAD = 11;
const LANE = 26;
const TALLEST = 230;
const NAME_ROOM = 90;

function arrow(tail: Point, tip: Point, colour: string, width: number, dash?: string): string {
  const long = distance(tail, tip);
  if (long < 1.5) return circle(tip, 4, { fill: colour });
  const head = Math.min(HEAD + width, long * 0.7);
  const neck = point(tip.x - ((tip.x - tail.x) * head * 0.8) / long, tip.y - ((tip.y - tail.y) * head * 0.8) / long);
  return line(tail, neck, { stroke: colour, "stroke-width": width, "stroke-dasharray": dash }) + arrowHead(tail, tip, head, colour);
}

export const arrowColour = (joint: number, { theme }: Sheet): string => theme.series[joint % theme.series.length] as string;

/** Arrows along one line: a lane for each, the residual in the last, with fine lines carrying each end down to the next start. */
function lanes({ arrows, end }: ArrowPath, names: readonly string[], residualName: string, top: number, sheet: Sheet): DrawnArrows {
  const { theme, left, right } = sheet;
  const nameRoom =
    Math.min(sheet.narrow ? 92 : 150, Math.max(...[...names, residualName].map((name) => textWidth(name, SMALL_TEXT, true)))) + 16;
  const xs = [0, ...arrows.map(({ tip }) => tip.x)];
  const [low, high] = [Math.min(...xs), Math.max(...xs)];
  const x = (value: number): number => left + nameRoom + ((value - low) / (high - low)) * (right - left - nameRoom);
  const rows = [
    ...arrows.map(({ joint, tail, tip }) => ({
      from: tail.x,
      to: tip.x,
      name: names[joint] as string,
      colour: arrowColour(joint, sheet),
      width: 3,
    })),
    { from: 0, to: end.x, name: residualName, colour: theme.ink, width: 4.5 },
  ];
  const yOf = (row: number): number => top + LANE * (row + 0.5) + (row === rows.length - 1 ? 8 : 0);
  const start = line(point(x(0), top), point(x(0), yOf(rows.length - 1) + 10), {
    stroke: theme.muted,
    "stroke-width": 1,
    "stroke-dasharray": "3 3",
  });
  const svg = rows.map(({ from, to, name, colour, width }, row) => {
    const y = yOf(row);
    const drop =
      row < rows.length - 1
        ? line(point(x(to), y), point(x(to), yOf(row + 1)), { stroke: theme.muted, "stroke-width": 1, "stroke-dasharray": "3 3" })
        : "";
    const residual = row === rows.length - 1;
    const rule = residual
      ? line(point(left, y - LANE / 2 - 3), point(right, y - LANE / 2 - 3), { stroke: theme.faint, "stroke-width": 1.2 })
      : "";
    return (
      rule +
      drop +
      arrow(point(x(from), y), point(x(to), y), colour, width) +
      text(left, y + 4.2, name, { fill: theme.ink, size: SMALL_TEXT, bold: true, room: nameRoom - 14 })
    );
  });
  return { svg: start + svg.join(""), bottom: yOf(rows.length - 1) + LANE / 2 };
}

/** Small boxes along an arrow, close enough that no word slips between them. */
function alongArrow({ tail, tip }: { tail: Point; tip: Point }): Box[] {
  const steps = Math.max(1, Math.ceil(distance(tail, tip) / 6));
  return Array.from({ length: steps + 1 }, (_, k) => {
    const x = tail.x + ((tip.x - tail.x) * k) / steps;
    const y = tail.y + ((tip.y - tail.y) * k) / steps;
    return { left: x - 5, right: x + 5, top: y - 5, bottom: y + 5 };
  });
}

/** Arrows head to tail in the plane, and from the first tail to the last tip what is left. */
function plane({ arrows, end }: ArrowPath, names: readonly string[], residualName: string, top: number, sheet: Sheet): DrawnArrows {
  const { theme, left, right } = sheet;
  const places = [point(0, 0), ...arrows.map(({ tip }) => tip)];
  const range = (pick: (place: Point) => number): [number, number] => [Math.min(...places.map(pick)), Math.max(...places.map(pick))];
  const [xLow, xHigh] = range(({ x }) => x);
  const [yLow, yHigh] = range(({ y }) => y);
  const margin = 56;
  const pad = 34;
  const scale = Math.min((right - left - 2 * margin) / Math.max(xHigh - xLow, 1e-12), TALLEST / Math.max(yHigh - yLow, 1e-12));
  const across = left + (right - left - scale * (xHigh - xLow)) / 2;
  const on = ({ x, y }: Point): Point => point(across + scale * (x - xLow), top + pad + scale * (yHigh - y));
  const bottom = top + 2 * pad + scale * (yHigh - yLow);
  const drawn = arrows.map((one: Arrow) => ({ ...one, tail: on(one.tail), tip: on(one.tip) }));
  const residual = { tail: on(point(0, 0)), tip: on(end) };
  const middle = ({ tail, tip }: { tail: Point; tip: Point }): Point => point((tail.x + tip.x) / 2, (tail.y + tip.y) / 2);
  const words = [
    ...drawn.map((one) => ({ at: middle(one), name: fitText(names[one.joint] as string, NAME_ROOM, SMALL_TEXT, true) })),
    { at: middle(residual), name: fitText(residualName, NAME_ROOM + 40, SMALL_TEXT, true) },
  ];
  const spots = placeBoxes(
    words.map(({ at, name }) => ({ at, width: textWidth(name, SMALL_TEXT, true) + 4, height: 16 })),
    { left, right, top, bottom },
    [...drawn, residual].flatMap(alongArrow),
  );
  const origin = circle(residual.tail, 4, { fill: theme.background, stroke: theme.ink, "stroke-width": 2 });
  const svg = [
    ...drawn.map(({ joint, tail, tip }) => arrow(tail, tip, arrowColour(joint, sheet), 3)),
    arrow(residual.tail, residual.tip, theme.ink, 4, undefined),
    origin,
    ...words.map(({ name }, k) => {
      const spot = spots[k];
      return spot ? text(spot.x, spot.y + 4.2, name, { fill: theme.ink, size: SMALL_TEXT, bold: true, anchor: "middle" }) : "";
    }),
  ];
  return { svg: svg.join(""), bottom };
}

export const drawArrows = (path: ArrowPath, names: readonly string[], residualName: string, top: number, sheet: Sheet): DrawnArrows =>
  (path.inLine ? lanes : plane)(path, names, residualName, top, sheet);
