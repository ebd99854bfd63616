import type { Point } from "../svg/point.js";
import { type Box, intersects } from "../svg/text.js";

/** A word that wants to stand near a place. */
export interface Wanting {
  readonly at: Point;
  readonly width: number;
  readonly height: number;
}

const DISTANCES = [12, 20, 30, 42];
const DIRECTIONS = 12;

/** For each word the first free place round its own, nearest first, clear of what is taken and inside the bounds; null where there is none. */
export function placeBoxes(words: readonly Wanting[], bounds: Box, taken: readonly Box[]): readonly (Point | null)[] {
  const used = [...taken];
  return words.map(({ at, width, height }) => {
    for (const distance of DISTANCES) {
      for (let k = 0; k < DIRECTIONS; k++) {
        const angle = (2 * Math.PI * k) / DIRECTIONS - Math.PI / 2;
        const x = at.x + Math.cos(angle) * (distance + width / 2);
        const y = at.y + Math.sin(angle) * (distance + height / 2 - 4);
        const box = { left: x - width / 2, right: x + width / 2, top: y - height / 2, bottom: y + height / 2 };
        const inside = box.left >= bounds.left && box.right <= bounds.right && box.top >= bounds.top && box.bottom <= bounds.bottom;
        if (!inside || used.some((other) => intersects(box, other))) continue;
        used.push(box);
        return { x, y };
      }
    }
    return null;
  });
}
