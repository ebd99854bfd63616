import { spread } from "../layout/spread.js";
import { point } from "../svg/point.js";
import { polyline } from "../svg/shapes.js";
import { LINE_HEIGHT, SMALL_TEXT, text } from "../svg/text.js";
import { textWidth } from "../svg/text-width.js";
import type { Theme } from "../theme.js";

/** What a line is, written at its right end. */
export interface EndLabel {
  readonly y: number;
  readonly content: string;
  readonly colour: string;
  readonly bold?: boolean;
}

const LEADER = 16;

/** Room that end labels need right of a plot, at most `most`; longer ones are cut. */
export const endLabelsRoom = (labels: readonly Pick<EndLabel, "content" | "bold">[], most: number): number =>
  Math.min(most, LEADER + 4 + Math.max(0, ...labels.map(({ content, bold }) => textWidth(content, SMALL_TEXT, bold))));

/** Labels at the ends of lines, moved apart where lines end close together; a thin leader says which is which. */
export function endLabels(labels: readonly EndLabel[], x: number, right: number, top: number, bottom: number, theme: Theme): string {
  const sorted = [...labels].sort((a, b) => a.y - b.y);
  const middles = spread(
    sorted.map(({ y }) => ({ wanted: y, size: LINE_HEIGHT - 1 })),
    top,
    bottom,
    0,
  );
  if (!middles) return "";
  return sorted
    .map(({ y, content, colour, bold = false }, k) => {
      const middle = middles[k] as number;
      const leader = polyline([point(x + 2, y), point(x + LEADER * 0.4, y), point(x + LEADER - 5, middle), point(x + LEADER - 1, middle)], {
        stroke: colour,
        "stroke-width": 1.2,
      });
      return (
        leader + text(x + LEADER + 2, middle + 4.2, content, { fill: theme.ink, size: SMALL_TEXT, bold, room: right - x - LEADER - 2 })
      );
    })
    .join("");
}

export const endLabelsHeight = (count: number): number => count * (LINE_HEIGHT - 1);
