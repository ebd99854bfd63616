/** A place on the sheet in pixels: x to the right, y down. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

export const point = (x: number, y: number): Point => ({ x, y });

/** The place `along` pixels from `from` in the direction `slope` (radians, upward positive) and `across` pixels to its upper side. */
export const offset = (from: Point, slope: number, along: number, across = 0): Point => ({
  x: from.x + along * Math.cos(slope) - across * Math.sin(slope),
  y: from.y - along * Math.sin(slope) - across * Math.cos(slope),
});

export const distance = (a: Point, b: Point): number => Math.hypot(b.x - a.x, b.y - a.y);
