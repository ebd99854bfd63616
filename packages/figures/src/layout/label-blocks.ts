import { type Point, point } from "../svg/point.js";
import { line } from "../svg/shapes.js";
import { LINE_HEIGHT, SMALL_TEXT, TEXT_SIZE, text } from "../svg/text.js";
import { textWidth } from "../svg/text-width.js";
import type { Theme } from "../theme.js";
import { spread } from "./spread.js";

/** A small drawn sign before a word; drawn round its middle. */
export type Mark = (centre: Point) => string;

export interface LabelLine {
  readonly content: string;
  readonly bold?: boolean;
  readonly muted?: boolean;
  readonly mark?: Mark;
}

/** A few lines of text that belong to one place of a drawing. */
export interface LabelBlock {
  readonly anchor: Point;
  readonly lines: readonly LabelLine[];
}

export const MARK_ROOM = 17;
const GAP = 12;
const LEADER_GAP = 5;

const sizeOf = ({ bold }: LabelLine): number => (bold ? TEXT_SIZE : SMALL_TEXT);
const lineWidth = (item: LabelLine): number =>
  textWidth(item.content, sizeOf(item), item.bold) + (item.mark && item.content !== "" ? MARK_ROOM : item.mark ? MARK_ROOM - 5 : 0);
const blockWidth = ({ lines }: LabelBlock): number => Math.max(...lines.map(lineWidth));

export interface PlacedBlocks {
  readonly svg: string;
  readonly height: number;
}

interface Band {
  readonly left: number;
  readonly right: number;
  /** Upper edge of the band. */
  readonly top: number;
  /** Whether the drawing lies below the band or above it. */
  readonly drawing: "below" | "above";
}

export const bandHeight = (blocks: readonly LabelBlock[]): number => Math.max(0, ...blocks.map(({ lines }) => lines.length)) * LINE_HEIGHT;

export const fitsBand = (blocks: readonly LabelBlock[], left: number, right: number): boolean =>
  blocks.reduce((sum, block) => sum + blockWidth(block) + GAP, -GAP) <= right - left;

/** One row of blocks, each as near to its place as the others allow, with a thin leader to it. null when the row is too short. */
export function placeBlocks(blocks: readonly LabelBlock[], { left, right, top, drawing }: Band, theme: Theme): PlacedBlocks | null {
  const middles = spread(
    blocks.map((block) => ({ wanted: block.anchor.x, size: blockWidth(block) })),
    left,
    right,
    GAP,
  );
  if (!middles) return null;
  const height = bandHeight(blocks);
  const svg = blocks.map((block, k) => {
    const middle = middles[k] as number;
    const own = block.lines.length * LINE_HEIGHT;
    // Blocks end where the drawing begins, so that leaders are short.
    const start = drawing === "below" ? top + height - own : top;
    const texts = block.lines.map((item, row) => {
      const width = lineWidth(item);
      const y = start + row * LINE_HEIGHT + 13;
      const mark = item.mark ? item.mark(point(middle - width / 2 + 6, y - 4.5)) : "";
      const fill = item.muted ? theme.muted : theme.ink;
      const words = text(middle + width / 2, y, item.content, { fill, size: sizeOf(item), bold: item.bold ?? false, anchor: "end" });
      return mark + words;
    });
    const from = point(middle, drawing === "below" ? top + height + LEADER_GAP : top - LEADER_GAP);
    return line(from, block.anchor, { stroke: theme.muted, "stroke-width": 1, "stroke-opacity": 0.7 }) + texts.join("");
  });
  return { svg: svg.join(""), height };
}
