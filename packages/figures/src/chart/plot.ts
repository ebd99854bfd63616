import type { ScaleLinear } from "d3-scale";
import { scaleLinear } from "d3-scale";
import type { Sheet } from "../figure-options.js";
import { point } from "../svg/point.js";
import { line } from "../svg/shapes.js";
import { SMALL_TEXT, text } from "../svg/text.js";
import { textWidth } from "../svg/text-width.js";

/** A rectangle with two linear scales. */
export interface Plot {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface PlotRoom {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly xDomain: readonly [number, number];
  readonly yDomain: readonly [number, number];
}

export const plotIn = ({ left, right, top, bottom, xDomain, yDomain }: PlotRoom): Plot => ({
  x: scaleLinear(xDomain, [left, right]),
  y: scaleLinear(yDomain, [bottom, top]),
  left,
  right,
  top,
  bottom,
});

/** Horizontal lines and their numbers, left of the plot. */
export function yAxis({ y, left, right }: Plot, { theme, labels: { numbers } }: Sheet, count: number): string {
  return y
    .ticks(count)
    .map((value) => {
      const at = y(value);
      const grid = line(point(left, at), point(right, at), {
        stroke: value === 0 ? theme.muted : theme.faint,
        "stroke-width": value === 0 ? 1.4 : 1,
      });
      return (
        grid +
        text(left - 7, at + 4.2, numbers.plain(value, decimalsOf(y.ticks(count))), { fill: theme.muted, size: SMALL_TEXT, anchor: "end" })
      );
    })
    .join("");
}

/** Room for the numbers left of a plot. */
export function yAxisRoom(yDomain: readonly [number, number], { labels: { numbers } }: Sheet, count: number): number {
  const ticks = scaleLinear(yDomain, [0, 1]).ticks(count);
  return Math.max(18, ...ticks.map((value) => textWidth(numbers.plain(value, decimalsOf(ticks)), SMALL_TEXT))) + 9;
}

const decimalsOf = (ticks: readonly number[]): number => {
  const step = Math.abs((ticks[1] ?? 1) - (ticks[0] ?? 0));
  return step >= 1 || step === 0 ? 0 : Math.min(6, Math.ceil(-Math.log10(step) - 1e-9));
};

/** Round values along the horizontal axis, as many as their numbers leave room for. */
export function fittingTicks({ x }: Plot, { labels: { numbers } }: Sheet): readonly number[] {
  const fits = (values: readonly number[]): boolean => {
    const wide = Math.max(...values.map((value) => textWidth(numbers.plain(value, 0), SMALL_TEXT)));
    return values.length < 2 || x(values[1] as number) - x(values[0] as number) >= wide + 10;
  };
  return [6, 5, 4, 3, 2, 1].map((count) => x.ticks(count)).find(fits) ?? [];
}

/** Ticks, numbers and title below a plot. Numbers that would touch are left out. */
export function xAxis(
  { x, left, bottom }: Plot,
  values: readonly number[],
  title: string,
  { theme, right, labels: { numbers } }: Sheet,
): string {
  let free = Number.NEGATIVE_INFINITY;
  const ticks = values.map((value) => {
    const at = x(value);
    const shown = numbers.plain(value, 0);
    const half = textWidth(shown, SMALL_TEXT) / 2;
    const mark = line(point(at, bottom), point(at, bottom + 4), { stroke: theme.muted, "stroke-width": 1.2 });
    if (at - half < free) return mark;
    free = at + half + 8;
    return mark + text(at, bottom + 17, shown, { fill: theme.muted, size: SMALL_TEXT, anchor: "middle" });
  });
  const name = text(left, bottom + 36, title, { fill: theme.muted, size: SMALL_TEXT, room: right - left });
  return ticks.join("") + name;
}
