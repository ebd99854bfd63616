import { element, escapeText } from "./element.js";
import { fitText, textWidth } from "./text-width.js";

export const FONT_FAMILY = "Inter, 'DejaVu Sans', sans-serif";
export const TEXT_SIZE = 13;
export const SMALL_TEXT = 12;
export const LINE_HEIGHT = 17;

export interface TextStyle {
  readonly fill: string;
  readonly size?: number;
  readonly bold?: boolean;
  readonly anchor?: "start" | "middle" | "end";
  /** Longer text is cut with an ellipsis. */
  readonly room?: number;
}

/** One line of text with its baseline at y. Never turned, so that it can be read under a vehicle. */
export function text(
  x: number,
  y: number,
  content: string,
  { fill, size = TEXT_SIZE, bold = false, anchor = "start", room }: TextStyle,
): string {
  const shown = room === undefined ? content : fitText(content, room, size, bold);
  if (shown === "") return "";
  return element(
    "text",
    { x, y, fill, "font-size": size, "font-weight": bold ? "600" : undefined, "text-anchor": anchor === "start" ? undefined : anchor },
    escapeText(shown),
  );
}

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The room a line of text takes, accents and descenders included. */
export function textBox(x: number, y: number, content: string, size: number, bold: boolean, anchor: "start" | "middle" | "end"): Box {
  const width = textWidth(content, size, bold);
  const left = anchor === "start" ? x : anchor === "middle" ? x - width / 2 : x - width;
  return { left, right: left + width, top: y - 0.93 * size, bottom: y + 0.24 * size };
}

export const intersects = (a: Box, b: Box): boolean => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
