import type { Sheet } from "../figure-options.js";
import { coordinate, element, escapeText } from "./element.js";
import { FONT_FAMILY } from "./text.js";

export interface FigureDocument {
  readonly title: string;
  /** The figure in sentences, numbers included: what a reader who does not see it is told. */
  readonly description: readonly string[];
  readonly height: number;
  readonly body: readonly string[];
}

/** A stand-alone SVG: no style sheet, no ids, no scripts, nothing fetched. */
export function figureDocument({ width, theme }: Sheet, { title, description, height, body }: FigureDocument): string {
  const tall = Math.ceil(height);
  return element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: `0 0 ${coordinate(width)} ${coordinate(tall)}`,
      width,
      height: tall,
      role: "img",
      "aria-label": title,
      "font-family": FONT_FAMILY,
    },
    element("title", {}, escapeText(title)),
    element("desc", {}, escapeText(description.join(" ")) || " "),
    element("rect", { x: 0, y: 0, width, height: tall, fill: theme.background }),
    ...body,
  );
}
