import { area, curveMonotoneX, line as linePath } from "d3-shape";
import type { Sheet } from "../figure-options.js";
import { paragraph } from "../layout/caption.js";
import { element } from "../svg/element.js";
import { point } from "../svg/point.js";
import { line } from "../svg/shapes.js";
import { LINE_HEIGHT, text } from "../svg/text.js";
import { SERIES_DASHES } from "../theme.js";
import type { AccelerationLimit, AccelerationPanel, AccelerationPoint, AccelerationSeries } from "./acceleration-series.js";
import { type EndLabel, endLabels, endLabelsHeight, endLabelsRoom } from "./end-labels.js";
import { fittingTicks, type Plot, plotIn, xAxis, yAxis, yAxisRoom } from "./plot.js";

export const panelMaximum = ({ series, limits }: AccelerationPanel): number => {
  const tops = [
    ...limits.map(({ value }) => value * 1.06),
    ...series.flatMap(({ points }) => points.map(({ estimate }) => estimate.high * 1.02)),
  ];
  return Math.max(1, ...tops.filter(Number.isFinite));
};

const LEAST_HEIGHT = 104;
const TICKS = 4;

/** Most of a sheet's width that names at line ends may take. */
export const MOST_LABEL_ROOM = 0.45;

/** Where all charts of a figure begin and end, so that their speeds stand under one another. */
export interface PanelEdges {
  readonly plotLeft: number;
  readonly plotRight: number;
}

export function panelEdges(panels: readonly AccelerationPanel[], sheet: Sheet): PanelEdges {
  const axis = Math.max(...panels.map((panel) => yAxisRoom([0, panelMaximum(panel)], sheet, TICKS)));
  const names = panels.flatMap((panel) => [
    ...panel.limits.map((limit) => ({ content: limitText(limit, sheet) })),
    ...panel.series.map((series) => ({ content: seriesText(series, panel, sheet), bold: true })),
  ]);
  return { plotLeft: sheet.left + axis, plotRight: sheet.right - endLabelsRoom(names, sheet.width * MOST_LABEL_ROOM) };
}

/** The number first: where a name is too long it is the name that is cut. The unit stands in the heading. */
const named = (value: number, name: string, { labels }: Sheet): string =>
  `${labels.numbers.plain(value, Math.abs(value) < 9.95 ? 1 : 0)} ${name}`;
const limitText = ({ name, value }: AccelerationLimit, sheet: Sheet): string => named(value, name, sheet);
const lastOf = ({ points }: AccelerationSeries): number => (points[points.length - 1] as AccelerationPoint).estimate.value;
/** A line that is what the chart is about needs no name of its own. */
const seriesText = (series: AccelerationSeries, { title }: AccelerationPanel, sheet: Sheet): string =>
  named(lastOf(series), series.name === title ? "" : series.name, sheet).trimEnd();

const styleOf = ({ section }: AccelerationSeries, { theme }: Sheet) => ({
  colour: section === null ? theme.ink : (theme.series[section % theme.series.length] as string),
  dash: section === null ? undefined : SERIES_DASHES[section % SERIES_DASHES.length],
  width: section === null ? 2.4 : 2,
});

/** Acceleration grows with the square of the speed, from nothing at rest. */
const AT_REST: AccelerationPoint = { rpm: 0, estimate: { value: 0, u: 0, low: 0, high: 0 } };

function drawSeries(series: AccelerationSeries, { x, y }: Plot, sheet: Sheet): { band: string; curve: string } {
  const { colour, dash, width } = styleOf(series, sheet);
  const points = [AT_REST, ...series.points];
  const px = ({ rpm }: AccelerationPoint): number => x(rpm);
  const band = area<AccelerationPoint>(
    px,
    ({ estimate }) => y(Math.max(0, estimate.low)),
    ({ estimate }) => y(Math.max(0, estimate.high)),
  ).curve(curveMonotoneX)(points);
  const curve = linePath<AccelerationPoint>(px, ({ estimate }) => y(Math.max(0, estimate.value))).curve(curveMonotoneX)(points);
  return {
    band: element("path", { d: band ?? "", fill: colour, "fill-opacity": "0.16" }),
    curve: element("path", {
      d: curve ?? "",
      fill: "none",
      stroke: colour,
      "stroke-width": width,
      "stroke-dasharray": dash,
      "stroke-linejoin": "round",
    }),
  };
}

export interface DrawnPanel {
  readonly svg: string;
  readonly bottom: number;
}

/** One chart with its limits as lines and every line named where it ends. `withAxis`: speeds are written below it. */
export function accelerationPanel(
  panel: AccelerationPanel,
  top: number,
  maxRpm: number,
  withAxis: boolean,
  { plotLeft, plotRight }: PanelEdges,
  sheet: Sheet,
): DrawnPanel {
  const { theme, labels, left, right } = sheet;
  const title = text(left, top + 13, panel.title, { fill: theme.ink, bold: true, room: right - left });
  const count = panel.series.length + panel.limits.length;
  const plotTop = top + LINE_HEIGHT + 12;
  const yDomain = [0, panelMaximum(panel)] as const;
  const plot = plotIn({
    left: plotLeft,
    right: plotRight,
    top: plotTop,
    bottom: plotTop + Math.max(LEAST_HEIGHT, endLabelsHeight(count)),
    xDomain: [0, maxRpm],
    yDomain,
  });
  const limits = panel.limits.map(({ value, grave }) =>
    line(point(plot.left, plot.y(value)), point(plot.right, plot.y(value)), {
      stroke: grave ? theme.bad : theme.doubt,
      "stroke-width": 1.8,
      "stroke-dasharray": grave ? undefined : "7 4",
    }),
  );
  const drawn = panel.series.map((series) => drawSeries(series, plot, sheet));
  const ends: EndLabel[] = [
    ...panel.limits.map((limit) => ({
      y: plot.y(limit.value),
      content: limitText(limit, sheet),
      colour: limit.grave ? theme.bad : theme.doubt,
    })),
    ...panel.series.map((series) => ({
      y: plot.y(lastOf(series)),
      content: seriesText(series, panel, sheet),
      colour: styleOf(series, sheet).colour,
      bold: true,
    })),
  ];
  const axis = withAxis ? xAxis(plot, fittingTicks(plot, sheet), labels.shaftSpeedAxis, sheet) : "";
  let bottom = plot.bottom + (withAxis ? 42 : 8);
  const gone = panel.unknown.map((name) => {
    const said = paragraph({ left: plot.left, right, fill: theme.muted }, bottom, labels.item(name, labels.notKnown));
    bottom += said.height;
    return said.svg;
  });
  const svg = [
    title,
    yAxis(plot, sheet, TICKS),
    ...drawn.map(({ band }) => band),
    ...limits,
    ...drawn.map(({ curve }) => curve),
    endLabels(ends, plot.right, right, plot.top - 8, plot.bottom + 8, theme),
    axis,
    ...gone,
  ];
  return { svg: svg.join(""), bottom };
}
