import { fittingTicks, type Plot, plotIn, xAxis, yAxis, yAxisRoom } from "../chart/plot.js";
import { type FigureOptions, type Sheet, sheetOf } from "../figure-options.js";
import { caption, paragraph } from "../layout/caption.js";
import { badge, type KeyRow, keyList } from "../layout/key-list.js";
import { element } from "../svg/element.js";
import { figureDocument } from "../svg/figure-document.js";
import { point } from "../svg/point.js";
import { line, polyline } from "../svg/shapes.js";
import { SMALL_TEXT, text } from "../svg/text.js";
import { textWidth } from "../svg/text-width.js";
import { badgePlaces, badgesHeight } from "./badge-places.js";
import { LEVELS, levelRuns } from "./level-cells.js";
import type { PicturedQuantity, VibrationPicture } from "./vibration-picture.js";

const HEIGHT = 260;
const TICKS = 6;
/** Shades from dark to light, as opacities of one colour: told apart on paper too. */
const SHADES = [0.95, 0.66, 0.44, 0.26, 0.13];

/** How hard it shook at every order through the recording, with the orders of what turned drawn over it and those that fold back marked. */
export function vibrationMap(picture: VibrationPicture, options: FigureOptions): string {
  const sheet = sheetOf(options);
  const { labels, theme, left, right } = sheet;
  const { vibration } = labels;
  const marks = numbered(picture, sheet);
  const head = caption(sheet, 14, vibration.title, `${vibration.channel(picture.channel)}. ${vibration.timeAxis}`);
  const scale = shadeScale(picture, sheet, 14 + head.height + 6);
  const yDomain = picture.times;
  const plotLeft = left + yAxisRoom(yDomain, sheet, TICKS);
  const xOf = (order: number): number =>
    plotLeft + ((order - picture.orders[0]) / (picture.orders[1] - picture.orders[0])) * (right - plotLeft);
  const places = badgePlaces(
    marks.map(({ at }) => xOf(at)),
    plotLeft,
    right,
  );
  const badgesTop = 14 + head.height + 6 + scale.height + 8;
  const top = badgesTop + badgesHeight(places) + 8;
  const plot = plotIn({ left: plotLeft, right, top, bottom: top + HEIGHT, xDomain: picture.orders, yDomain });
  const list = keyList(
    marks.map(({ row }) => row),
    left,
    right,
    plot.bottom + 50,
    theme,
  );
  const ticks = fittingTicks(plot, sheet).filter(Number.isInteger);
  return figureDocument(sheet, {
    title: vibration.title,
    description: [
      `${vibration.channel(picture.channel)}.`,
      `${marks.map(({ row }) => labels.item(row.name, row.lines.map(({ content }) => content).join(", ") || labels.notKnown)).join("; ")}.`,
    ],
    height: plot.bottom + 50 + list.height,
    body: [
      head.svg,
      scale.svg,
      yAxis(plot, sheet, TICKS),
      cells(picture, plot, sheet),
      ...marks.map(({ draw }) => draw(plot)),
      ...marks.map(({ at, row }, k) => {
        const place = places[k] as { readonly x: number; readonly y: number };
        const centre = point(place.x, badgesTop + place.y);
        const end = point(Math.min(right, Math.max(plotLeft, xOf(at))), plot.top);
        return line(centre, end, { stroke: theme.muted, "stroke-width": 1 }) + row.sign(centre);
      }),
      xAxis(plot, ticks, vibration.orderAxis, sheet),
      list.svg,
    ],
  });
}

interface NumberedMark {
  readonly at: number;
  readonly row: KeyRow;
  readonly draw: (plot: Plot) => string;
}

/** Orders first, then those that fold back, each with its number. */
function numbered(picture: VibrationPicture, { theme, labels }: Sheet): readonly NumberedMark[] {
  const { vibration, numbers } = labels;
  const orders = picture.marks.map(({ name, at, amplitude, share, verdict }, k): NumberedMark => {
    const said = [
      ...(amplitude === null ? [] : [`${numbers.plain(amplitude, amplitude < 0.0995 ? 3 : 2)} m/s²`]),
      ...(share === null ? [] : [vibration.explains(`${numbers.plain(share * 100, 0)} %`)]),
      ...(verdict ? [vibration.verdict] : []),
    ];
    return {
      at,
      row: { sign: badge(String(k + 1), theme), name, lines: said.map((content) => ({ content, muted: content !== vibration.verdict })) },
      draw: (plot) =>
        line(point(plot.x(at), plot.top), point(plot.x(at), plot.bottom), {
          stroke: verdict ? theme.bad : theme.ink,
          "stroke-width": verdict ? 2.4 : 1,
          "stroke-dasharray": verdict ? undefined : "2 5",
        }),
    };
  });
  const folded = picture.folded.map(({ name, course }, k): NumberedMark => {
    const row = { sign: badge(String(picture.marks.length + k + 1), theme), name, lines: [{ content: vibration.foldedBack, muted: true }] };
    return {
      at: onMap(course, picture).at(-1)?.at(-1)?.at ?? picture.orders[1],
      row,
      draw: (plot) =>
        onMap(course, picture)
          .map((piece) =>
            polyline(
              piece.map(({ time, at }) => point(plot.x(at), plot.y(time))),
              { stroke: theme.doubt, "stroke-width": 1.8, "stroke-dasharray": "7 4" },
            ),
          )
          .join(""),
    };
  });
  return [...orders, ...folded];
}

type Course = VibrationPicture["folded"][number]["course"];

/** The pieces of a curve that lie on the map, in order of time. */
function onMap(course: Course, { orders, times }: VibrationPicture): readonly Course[] {
  const pieces: Course[number][][] = [[]];
  for (const place of course) {
    const inside = place.at >= orders[0] && place.at <= orders[1] && place.time >= times[0] && place.time <= times[1];
    if (inside) pieces.at(-1)?.push(place);
    else if (pieces.at(-1)?.length !== 0) pieces.push([]);
  }
  return pieces.filter((piece) => piece.length > 0);
}

/** The map itself: a rectangle for each run of one shade. */
function cells(picture: VibrationPicture, plot: Plot, { theme }: Sheet): string {
  const { rows, columns, amplitudes } = picture;
  const [wide, tall] = [(plot.right - plot.left) / columns, (plot.bottom - plot.top) / rows];
  return levelRuns(amplitudes, columns, Math.max(0, ...amplitudes))
    .map(({ row, from, to, level }) =>
      element("rect", {
        x: plot.left + from * wide,
        // The first moment is at the bottom.
        y: plot.bottom - (row + 1) * tall,
        width: (to - from) * wide,
        height: tall,
        fill: theme.low,
        "fill-opacity": String(SHADES[level]),
      }),
    )
    .join("");
}

/** What the amplitudes of a channel are written in, and how many of it are one in SI. */
const UNITS: { readonly [Q in PicturedQuantity]?: readonly [unit: string, perSi: number] } = {
  acceleration: ["m/s²", 1],
  velocity: ["mm/s", 1e3],
  displacement: ["mm", 1e3],
  pressure: ["Pa", 1],
};

const MOST_DIGITS = 6;
const SWATCH = 26;

/** What the shades mean, on a line or two. */
function shadeScale(
  picture: VibrationPicture,
  { theme, left, right, labels }: Sheet,
  top: number,
): { readonly svg: string; readonly height: number } {
  const { vibration, numbers } = labels;
  const [unit, perSi] = UNITS[picture.quantity] ?? [vibration.shareOfScale, 1];
  const half = (Math.max(0, ...picture.amplitudes) * perSi) / 2;
  // Two that count, however little a floor moves.
  const digits = half === 0 ? 1 : Math.min(MOST_DIGITS, Math.max(1, 1 - Math.floor(Math.log10(half))));
  const words = `${vibration.darkest(`${numbers.plain(half, digits)} ${unit}`)}; ${vibration.eachHalf}`;
  const swatches = Array.from({ length: LEVELS }, (_, level) =>
    element("rect", {
      x: left + level * SWATCH,
      y: top,
      width: SWATCH,
      height: 12,
      fill: theme.low,
      "fill-opacity": String(SHADES[level]),
    }),
  ).join("");
  const beside = left + LEVELS * SWATCH + 10;
  if (beside + textWidth(words, SMALL_TEXT) <= right)
    return { svg: swatches + text(beside, top + 10.5, words, { fill: theme.muted, size: SMALL_TEXT }), height: 16 };
  const below = paragraph({ left, right, fill: theme.muted }, top + 14, words);
  return { svg: swatches + below.svg, height: 16 + below.height };
}
