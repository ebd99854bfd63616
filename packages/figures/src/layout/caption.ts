import type { Sheet } from "../figure-options.js";
import { LINE_HEIGHT, SMALL_TEXT, TEXT_SIZE, text } from "../svg/text.js";
import { textWidth, wrapText } from "../svg/text-width.js";

export interface Caption {
  readonly svg: string;
  readonly height: number;
}

/** A heading on the left and, when there is room on its line, a remark on the right; else the remark stands below. */
export function caption({ left, right, theme }: Sheet, top: number, heading: string, remark = ""): Caption {
  const y = top + 13;
  const lines = wrapText(heading, right - left, TEXT_SIZE, true);
  const head = lines.map((shown, k) => text(left, y + k * LINE_HEIGHT, shown, { fill: theme.ink, bold: true })).join("");
  const tall = lines.length * LINE_HEIGHT;
  if (remark === "") return { svg: head, height: tall };
  const beside = textWidth(heading, TEXT_SIZE, true) + textWidth(remark, SMALL_TEXT) + 24 <= right - left;
  if (beside) return { svg: head + text(right, y, remark, { fill: theme.muted, size: SMALL_TEXT, anchor: "end" }), height: tall };
  const rest = paragraph({ left, right, fill: theme.muted }, top + tall, remark);
  return { svg: head + rest.svg, height: tall + rest.height };
}

/** Small text over as many lines as it takes. */
export function paragraph({ left, right, fill }: { left: number; right: number; fill: string }, top: number, content: string): Caption {
  const lines = wrapText(content, right - left, SMALL_TEXT);
  const svg = lines.map((shown, k) => text(left, top + 13 + k * LINE_HEIGHT, shown, { fill, size: SMALL_TEXT })).join("");
  return { svg, height: lines.length * LINE_HEIGHT };
}
