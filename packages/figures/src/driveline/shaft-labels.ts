import { angleText, usable } from "../estimate-text.js";
import type { Sheet } from "../figure-options.js";
import type { LabelLine, Mark } from "../layout/label-blocks.js";
import { point } from "../svg/point.js";
import { arrowHead, line } from "../svg/shapes.js";
import { type DrivelinePicture, shaftName } from "./driveline-picture.js";
import type { View } from "./projection.js";

/** A short arrow along the shaft, pointing where its driven end goes: down, up (side view), to one side (plan). */
function fallMark(rise: -1 | 0 | 1, { theme }: Sheet): Mark {
  return (c) => {
    const from = point(c.x - 5, c.y + rise * 3.5);
    const tip = point(c.x + 6, c.y - rise * 4);
    return (
      line(from, point(c.x + 3.5, c.y - rise * 2.3), { stroke: theme.ink, "stroke-width": 1.7, "stroke-linecap": "round" }) +
      arrowHead(from, tip, 6, theme.ink)
    );
  };
}

const towardPositiveY = (runs: DrivelinePicture["runs"]): "left" | "right" => (runs === "forward" ? "left" : "right");

function wayOf(picture: DrivelinePicture, angle: number, view: View, { labels }: Sheet): { word: string; rise: -1 | 0 | 1 } {
  // What shows as zero in hundredths of a degree has no way.
  if (Math.abs(angle) < 0.00008) return { word: view === "side" ? labels.level : labels.straight, rise: 0 };
  if (view === "side") return angle > 0 ? { word: labels.drivenEndLower, rise: -1 } : { word: labels.sourceEndLower, rise: 1 };
  const side = towardPositiveY(picture.runs);
  const other = side === "left" ? "right" : "left";
  return { word: labels.towardSide[angle > 0 ? side : other], rise: angle > 0 ? 1 : -1 };
}

/** What is written at a shaft: its name is given by the caller; its inclination or heading and which way it goes. */
export function shaftLines(picture: DrivelinePicture, shaft: number, view: View, sheet: Sheet): readonly LabelLine[] {
  const { labels } = sheet;
  const result = picture.analysis?.shafts[shaft];
  const estimate = view === "side" ? result?.inclination : result?.heading;
  if (!usable(estimate)) return [{ content: labels.notGauged, muted: true }];
  if (view === "plan" && !picture.measuredHeadings.includes(result?.id ?? "")) return [{ content: labels.notMeasured, muted: true }];
  const { word, rise } = wayOf(picture, estimate.value, view, sheet);
  return [
    { content: angleText(estimate, labels, true), bold: true },
    { content: word, mark: fallMark(rise, sheet) },
  ];
}

/** "Front section: 3.10° ± 0.20°, driven end lower". */
export function shaftSentence(picture: DrivelinePicture, shaft: number, view: View, sheet: Sheet): string {
  const said = shaftLines(picture, shaft, view, sheet).map(({ content }) => content);
  return `${sheet.labels.item(shaftName(picture, shaft), said.join(", "))}.`;
}
