import type { VehicleSide } from "../figure-labels.js";
import type { Sheet } from "../figure-options.js";
import { point } from "../svg/point.js";
import { arrowHead, line } from "../svg/shapes.js";
import { SMALL_TEXT, text } from "../svg/text.js";
import { textWidth } from "../svg/text-width.js";
import type { DrivelinePicture } from "./driveline-picture.js";

const ARROW = 30;

type Runs = DrivelinePicture["runs"];

/** The side view looks toward chain +Y: from the vehicle's left where power flows rearward, from its right where it flows forward. */
export const seenFromSide = (runs: Runs): VehicleSide => (runs === "rearward" ? "left" : "right");

/** Power flows from left to right on the sheet, so a vehicle's front is on the left of a rear shaft's picture. */
function forwardArrow(y: number, runs: Runs, { labels, theme, left, right }: Sheet): string {
  const style = { stroke: theme.ink, "stroke-width": 1.8, "stroke-linecap": "round" } as const;
  if (runs === "rearward") {
    const tip = point(left, y - 4.5);
    const tail = point(left + ARROW, y - 4.5);
    return (
      line(tail, point(left + 5, y - 4.5), style) +
      arrowHead(tail, tip, 9, theme.ink) +
      text(left + ARROW + 8, y, labels.forward, { fill: theme.ink, size: SMALL_TEXT })
    );
  }
  const tip = point(right, y - 4.5);
  const tail = point(right - ARROW, y - 4.5);
  const word = text(right - ARROW - 8, y, labels.forward, { fill: theme.ink, size: SMALL_TEXT, anchor: "end" });
  return line(tail, point(right - 5, y - 4.5), style) + arrowHead(tail, tip, 9, theme.ink) + word;
}

function farWord(y: number, runs: Runs, word: string, { theme, left, right, labels }: Sheet): string {
  const room = right - left - ARROW - textWidth(labels.forward, SMALL_TEXT) - 24;
  const rearward = runs === "rearward";
  return text(rearward ? right : left, y, word, { fill: theme.muted, size: SMALL_TEXT, anchor: rearward ? "end" : "start", room });
}

export const SURROUNDINGS_HEIGHT = 34;

/** Ground line with the way the vehicle runs. The height of the ground is not to scale: no tyre is drawn. */
export function groundLine(top: number, runs: Runs, sheet: Sheet): string {
  const { theme, left, right, labels } = sheet;
  const y = top + 4;
  const ticks: string[] = [];
  for (let x = left + 8; x <= right; x += 16) {
    ticks.push(line(point(x, y), point(x - 6, y + 6), { stroke: theme.faint, "stroke-width": 1.4 }));
  }
  const ground = line(point(left, y), point(right, y), { stroke: theme.muted, "stroke-width": 1.6 });
  return ticks.join("") + ground + forwardArrow(y + 23, runs, sheet) + farWord(y + 23, runs, labels.ground, sheet);
}

/** From above: the way the vehicle runs, and which of its sides is up in the picture. */
export function whichSideIsUp(top: number, runs: Runs, sheet: Sheet): string {
  const y = top + 20;
  return forwardArrow(y, runs, sheet) + farWord(y, runs, sheet.labels.upperEdgeIs[seenFromSide(runs) === "left" ? "right" : "left"], sheet);
}

/** Straight ahead through the first joint: what headings are measured from. */
export const straightAhead = (y: number, { theme, left, right }: Sheet): string =>
  line(point(left, y), point(right, y), { stroke: theme.faint, "stroke-width": 1.5, "stroke-dasharray": "14 5 3 5" });
