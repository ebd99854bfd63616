import { type Point, point } from "../svg/point.js";

/** An arrow in the plane of contributions, from tail to tip; y upward. */
export interface Arrow {
  readonly joint: number;
  readonly tail: Point;
  readonly tip: Point;
}

export interface ArrowPath {
  readonly arrows: readonly Arrow[];
  readonly end: Point;
  /** All arrows run along one line: they are drawn in lanes under one another. */
  readonly inLine: boolean;
}

/** Arrows that stray from one line by less than this share of their reach would lie on top of one another. */
const IN_LINE = 0.12;
/** Shorter than this, in rad^2, is rounding (a joint of 0.006 degrees). */
const NOTHING = 1e-8;

/** Head to tail from the origin, turned so that the first arrow points to the right. */
export function arrowPath(contributions: readonly { readonly re: number; readonly im: number }[]): ArrowPath | null {
  const first = contributions.find(({ re, im }) => Math.hypot(re, im) > NOTHING);
  if (!first) return null;
  const size = Math.hypot(first.re, first.im);
  const [c, s] = [first.re / size, first.im / size];
  let at = point(0, 0);
  const arrows = contributions.flatMap(({ re, im }, joint) => {
    const tail = at;
    at = point(at.x + re * c + im * s, at.y + im * c - re * s);
    return Math.hypot(re, im) > NOTHING ? [{ joint, tail, tip: at }] : [];
  });
  const places = [point(0, 0), ...arrows.map(({ tip }) => tip)];
  const reach = (pick: (place: Point) => number): number => Math.max(...places.map(pick)) - Math.min(...places.map(pick));
  return { arrows, end: at, inLine: reach(({ y }) => y) < IN_LINE * reach(({ x }) => x) };
}
