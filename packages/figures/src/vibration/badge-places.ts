import { BADGE_BAND } from "../layout/key-list.js";
import { spread } from "../layout/spread.js";

const GAP = 2;

/** A badge's middle: across the sheet, and down from the upper edge of its band. */
export interface BadgePlace {
  readonly x: number;
  readonly y: number;
}

/** Places for numbered badges above lines, as near to them as their number allows: in as few rows as hold them all, the rows taken in turn. */
export function badgePlaces(wanted: readonly number[], left: number, right: number): readonly BadgePlace[] {
  const order = wanted.map((x, index) => ({ x, index })).sort((a, b) => a.x - b.x);
  for (let rows = 1; ; rows++) {
    const placed = placedIn(rows, order, left, right);
    if (placed !== null) return placed;
  }
}

interface Wanted {
  readonly x: number;
  readonly index: number;
}

function placedIn(rows: number, order: readonly Wanted[], left: number, right: number): readonly BadgePlace[] | null {
  const places: BadgePlace[] = [];
  for (let row = 0; row < rows; row++) {
    const own = order.filter((_, k) => k % rows === row);
    const middles = spread(
      own.map(({ x }) => ({ wanted: x, size: BADGE_BAND })),
      left,
      right,
      GAP,
    );
    if (middles === null) return null;
    for (const [k, { index }] of own.entries()) places[index] = { x: middles[k] as number, y: (row + 0.5) * (BADGE_BAND + GAP) };
  }
  return places;
}

/** How tall the band of badges is. */
export const badgesHeight = (places: readonly BadgePlace[]): number => Math.max(0, ...places.map(({ y }) => y)) + (BADGE_BAND + GAP) / 2;
