import { point } from "../svg/point.js";
import { circle } from "../svg/shapes.js";
import { SMALL_TEXT, TEXT_SIZE, text } from "../svg/text.js";
import { textWidth, wrapText } from "../svg/text-width.js";
import type { Theme } from "../theme.js";
import type { LabelLine, Mark } from "./label-blocks.js";

/** A row of the list below a drawing: the sign that stands in the drawing, a name, and what there is to say. */
export interface KeyRow {
  readonly sign: Mark;
  readonly name: string;
  readonly lines: readonly LabelLine[];
}

const ROW = 18;
const SIGN_ROOM = 28;
const BADGE_RADIUS = 9.5;

/** A numbered badge, the same in the drawing and in the list. */
export const badge =
  (label: string, theme: Theme): Mark =>
  (centre) =>
    circle(centre, BADGE_RADIUS, { fill: theme.background, stroke: theme.muted, "stroke-width": 1.2 }) +
    text(centre.x, centre.y + 4.4, label, { fill: theme.ink, size: SMALL_TEXT, anchor: "middle", bold: true });

export const BADGE_BAND = 2 * BADGE_RADIUS + 4;

export interface KeyList {
  readonly svg: string;
  readonly height: number;
}

const COLUMN = 300;
const BETWEEN_COLUMNS = 24;

/** A list below a drawing, in two columns read downward where the sheet is wide enough. */
export function keyList(rows: readonly KeyRow[], left: number, right: number, top: number, theme: Theme): KeyList {
  if (right - left < 2 * COLUMN + BETWEEN_COLUMNS || rows.length < 4) return column(rows, left, right, top, theme);
  const half = Math.ceil(rows.length / 2);
  const middle = (left + right) / 2;
  const first = column(rows.slice(0, half), left, middle - BETWEEN_COLUMNS / 2, top, theme);
  const second = column(rows.slice(half), middle + BETWEEN_COLUMNS / 2, right, top, theme);
  return { svg: first.svg + second.svg, height: Math.max(first.height, second.height) };
}

/** Rows of a name and, below it, its values on one line; a value that does not fit goes to the next line, and to more where it is longer than one. */
function column(rows: readonly KeyRow[], left: number, right: number, top: number, theme: Theme): KeyList {
  const start = left + SIGN_ROOM;
  let y = top;
  const svg = rows.map(({ sign, name, lines }) => {
    let out = sign(point(left + BADGE_RADIUS + 1, y + ROW / 2 + 1));
    out += text(start, y + 14, name, { fill: theme.ink, bold: true, room: right - start });
    let x = start;
    y += lines.length > 0 ? ROW : 0;
    for (const { content, bold = false, muted, mark } of lines) {
      const size = bold ? TEXT_SIZE : SMALL_TEXT;
      const markRoom = mark ? 17 : 0;
      const room = right - start - markRoom;
      const pieces = wrapText(content, room, size, bold);
      // A mark may stand without a word.
      (pieces.length === 0 ? [""] : pieces).forEach((piece, k) => {
        const wide = markRoom + textWidth(piece, size, bold);
        if (x > start && (k > 0 || x + wide > right)) {
          x = start;
          y += ROW;
        }
        if (mark && k === 0) out += mark(point(x + 6, y + 9.5));
        out += text(x + markRoom, y + 14, piece, { fill: muted ? theme.muted : theme.ink, size, bold });
        x += wide + 14;
      });
    }
    y += ROW + 7;
    return out;
  });
  return { svg: svg.join(""), height: y - top };
}
