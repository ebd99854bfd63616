import { degreesToRadians, wrapDegrees } from "@halfturn/engine/units";
import type { DrivelinePicture } from "../driveline/driveline-picture.js";
import { shaftName } from "../driveline/driveline-picture.js";
import { degrees } from "../estimate-text.js";
import { type FigureOptions, type Sheet, sheetOf } from "../figure-options.js";
import { caption, paragraph } from "../layout/caption.js";
import { figureDocument } from "../svg/figure-document.js";
import { type Point, point } from "../svg/point.js";
import { LINE_HEIGHT, SMALL_TEXT, TEXT_SIZE, text } from "../svg/text.js";
import { textWidth } from "../svg/text-width.js";
import { bestYokeStyle, DIAL_RADIUS, drawDial, drivenYokeStyle, sourceYokeStyle, type YokeStyle, yokeBar } from "./dial.js";

/** A best phasing nearer than this to the one there is makes no difference that a spline could be set to. Degrees. */
const SAME = 0.5;
const LEAST_CELL = 150;

interface SectionPhasing {
  readonly name: string;
  readonly phasing: number | null;
  readonly measured: boolean;
  /** Degrees in (-90, 90], null where unknown or where it makes no difference. */
  readonly best: number | null;
  readonly differs: boolean;
}

function phasings(picture: DrivelinePicture): readonly SectionPhasing[] {
  return picture.driveline.sections.map(({ id, phasing: angle, phasingMeasured }, k) => {
    const phasing = angle === null || !Number.isFinite(angle) ? null : wrapDegrees(degrees(angle), 90);
    const bestAngle = picture.analysis?.cancellation.bestPhasing[id];
    const best = bestAngle === undefined || !Number.isFinite(bestAngle) ? null : wrapDegrees(degrees(bestAngle), 90);
    const differs = best !== null && (phasing === null || Math.abs(wrapDegrees(best - phasing, 90)) > SAME);
    return { name: shaftName(picture, k + 1), phasing, measured: phasingMeasured, best, differs };
  });
}

/** What is written below a dial, most important first. */
function sentences({ phasing, measured, best, differs }: SectionPhasing, { labels }: Sheet): readonly string[] {
  if (phasing === null && best === null) return [labels.phasingNotKnown];
  const now =
    phasing === null
      ? [labels.phasingNotKnown]
      : [`${labels.phasing} ${labels.numbers.angle(phasing)}`, ...(measured ? [] : [labels.notMeasured])];
  if (best === null) return now;
  return [...now, differs ? `${labels.bestPhasing} ${labels.numbers.angle(best)}` : labels.phasingAsBest];
}

/** What the three bars are, drawn as they are in the dials. */
function key(top: number, ghost: boolean, { left, right, theme, labels }: Sheet): { svg: string; height: number } {
  const entries: (readonly [string, YokeStyle])[] = [
    [labels.sourceEndYoke, sourceYokeStyle(theme)],
    [labels.drivenEndYoke, drivenYokeStyle(theme)],
    ...(ghost ? [[labels.bestPhasing, bestYokeStyle(theme)] as const] : []),
  ];
  const sign = 54;
  let x = left;
  let y = top;
  const svg = entries.map(([word, style]) => {
    const wide = sign + textWidth(word, SMALL_TEXT);
    if (x > left && x + wide > right) {
      x = left;
      y += 22;
    }
    const out =
      yokeBar(point(x + 21, y + 9), Math.PI / 2, 14, style) +
      text(x + sign - 4, y + 13.4, word, { fill: theme.ink, size: SMALL_TEXT, room: right - x - sign + 4 });
    x += wide + 26;
    return out;
  });
  return { svg: svg.join(""), height: y - top + 22 };
}

/**
 * One dial for each section, looking along it from the source: the source-end yoke upright, the driven-end yoke at the phasing (clockwise positive), and as a
 * ghost where it would leave least with the other sections as they stand.
 */
export function phasingView(picture: DrivelinePicture, options: FigureOptions): string {
  const sheet = sheetOf(options);
  const { labels, theme, left, right } = sheet;
  const sections = phasings(picture);
  const head = caption(sheet, 14, labels.phasingView, sections.length > 0 ? labels.seenFromSource : "");
  let y = 14 + head.height + 10;
  if (sections.length === 0) {
    const none = paragraph({ left, right, fill: theme.muted }, y, labels.noSection);
    return figureDocument(sheet, {
      title: labels.phasingView,
      description: [labels.noSection],
      height: y + none.height + 14,
      body: [head.svg, none.svg],
    });
  }

  const most = Math.max(1, Math.floor((right - left) / LEAST_CELL));
  // Full rows first would leave a lone dial at the end; rows of about equal length read better.
  const perRow = Math.ceil(sections.length / Math.ceil(sections.length / most));
  const cell = (right - left) / perRow;
  const lines = 1 + Math.max(...sections.map((section) => sentences(section, sheet).length));
  const tall = 2 * DIAL_RADIUS + 10 + lines * LINE_HEIGHT + 16;
  const dials = sections.map((section, k) => {
    const centre: Point = point(left + cell * ((k % perRow) + 0.5), y + Math.floor(k / perRow) * tall + DIAL_RADIUS);
    const style = { anchor: "middle", room: cell - 10 } as const;
    const base = centre.y + DIAL_RADIUS + 22;
    const radians = (angle: number | null): number | null => (angle === null ? null : degreesToRadians(angle));
    return (
      drawDial(
        { centre, phasing: radians(section.phasing), measured: section.measured, best: section.differs ? radians(section.best) : null },
        theme,
      ) +
      text(centre.x, base, section.name, { ...style, fill: theme.ink, bold: true }) +
      sentences(section, sheet)
        .map((said, row) =>
          text(centre.x, base + (row + 1) * LINE_HEIGHT, said, {
            ...style,
            fill: row === 0 ? theme.ink : theme.muted,
            size: row === 0 ? TEXT_SIZE : SMALL_TEXT,
          }),
        )
        .join("")
    );
  });
  y += Math.ceil(sections.length / perRow) * tall + 4;
  const ghost = sections.some(({ differs }) => differs);
  const legend = key(y, ghost, sheet);
  return figureDocument(sheet, {
    title: labels.phasingView,
    description: sections.map((section) => `${labels.item(section.name, sentences(section, sheet).join(", "))}.`),
    height: y + legend.height + 12,
    body: [head.svg, ...dials, legend.svg],
  });
}
