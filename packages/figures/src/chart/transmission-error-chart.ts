import { type ArmMap, chainState, motionScope, transmissionErrorAt, wholeChain } from "@halfturn/engine/kinematics";
import { type DrivelinePicture, knownPoses } from "../driveline/driveline-picture.js";
import { angleText, degrees } from "../estimate-text.js";
import { type FigureOptions, type Sheet, sheetOf } from "../figure-options.js";
import { caption, paragraph } from "../layout/caption.js";
import { figureDocument } from "../svg/figure-document.js";
import { point } from "../svg/point.js";
import { polyline } from "../svg/shapes.js";
import { SERIES_DASHES } from "../theme.js";
import { MOST_LABEL_ROOM } from "./acceleration-panel.js";
import { endLabels, endLabelsHeight, endLabelsRoom } from "./end-labels.js";
import { plotIn, xAxis, yAxis, yAxisRoom } from "./plot.js";

const SAMPLES = 180;
const TICKS = 5;
/** A scale finer than this, in degrees, would blow rounding up to a picture. */
const LEAST_SCALE = 0.001;

interface ErrorCurve {
  readonly name: string;
  readonly section: number | null;
  /** Degrees, at SAMPLES + 1 equal steps of one turn. */
  readonly values: readonly number[];
}

const sample = (map: ArmMap): number[] =>
  Array.from({ length: SAMPLES + 1 }, (_, k) => degrees(transmissionErrorAt(map, (2 * Math.PI * k) / SAMPLES)));

/** The curves whose phasings are known; the driven end last, so that it is drawn on top. */
function curvesOf(picture: DrivelinePicture, { labels }: Sheet): readonly ErrorCurve[] {
  const poses = knownPoses(picture);
  if (!poses) return [];
  const { driveline, names } = picture;
  const state = chainState(driveline, poses);
  const scope = motionScope(driveline);
  return [
    ...driveline.sections.flatMap(({ id }, k) =>
      scope.drive[k] ? [{ name: names.sections[id] ?? id, section: k, values: sample(state.fromSource[k] as ArmMap) }] : [],
    ),
    ...(scope.whole ? [{ name: labels.drivenEnd, section: null, values: sample(wholeChain(state)) }] : []),
  ];
}

/** How far the driven end and each section run ahead of or behind uniform turning, over one turn of the source. */
export function transmissionErrorChart(picture: DrivelinePicture, options: FigureOptions): string {
  const sheet = sheetOf(options);
  const { labels, theme, left, right } = sheet;
  const curves = curvesOf(picture, sheet);
  const motion = picture.analysis?.motion;
  const notes = [
    labels.item(
      labels.drivenEnd,
      [
        `${labels.twiceATurn} ${angleText(motion?.secondOrder, labels)}`,
        `${labels.peakToPeak} ${angleText(motion?.transmissionErrorPeakToPeak, labels)}`,
      ].join("; "),
    ),
  ];
  const head = caption(sheet, 14, labels.errorAxis);
  const said = paragraph({ left, right, fill: theme.muted }, 14 + head.height + 2, notes.join(" "));
  const top = 14 + head.height + said.height + 20;
  const peak = Math.max(LEAST_SCALE, ...curves.flatMap(({ values }) => values.map(Math.abs))) * 1.12;
  const yDomain = [-peak, peak] as const;
  const named = curves.map(({ name, section, values }) => ({
    value: values[values.length - 1] as number,
    content: name,
    colour: section === null ? theme.ink : (theme.series[section % theme.series.length] as string),
    bold: section === null,
  }));
  const plot = plotIn({
    left: left + yAxisRoom(yDomain, sheet, TICKS),
    right: right - endLabelsRoom(named, sheet.width * MOST_LABEL_ROOM),
    top,
    bottom: top + Math.max(180, endLabelsHeight(curves.length)),
    xDomain: [0, 360],
    yDomain,
  });
  const lines = curves.map(({ section, values }) =>
    polyline(
      values.map((value, k) => point(plot.x((360 * k) / SAMPLES), plot.y(value))),
      {
        stroke: section === null ? theme.ink : (theme.series[section % theme.series.length] as string),
        "stroke-width": section === null ? 2.5 : 1.5,
        "stroke-dasharray": section === null ? undefined : SERIES_DASHES[section % SERIES_DASHES.length],
        "stroke-linejoin": "round",
      },
    ),
  );
  const ends = named.map(({ value, ...label }) => ({ ...label, y: plot.y(value) }));
  const unknown =
    curves.length === 0 ? paragraph({ left: plot.left + 12, right: plot.right, fill: theme.muted }, top + 50, labels.notKnown) : null;
  return figureDocument(sheet, {
    title: labels.transmissionErrorChart,
    description: curves.length === 0 ? [`${labels.notKnown}.`] : notes,
    height: plot.bottom + 50,
    body: [
      head.svg,
      said.svg,
      yAxis(plot, sheet, TICKS),
      ...lines,
      endLabels(ends, plot.right, right, plot.top, plot.bottom, theme),
      xAxis(plot, [0, 90, 180, 270, 360], labels.sourceTurnAxis, sheet),
      unknown?.svg ?? "",
    ],
  });
}
