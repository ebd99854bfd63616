import { toSi } from "@halfturn/engine/units";
import type { FigureNumbers } from "../figure-labels.js";
import { type FigureOptions, type Sheet, sheetOf } from "../figure-options.js";
import { caption } from "../layout/caption.js";
import { element } from "../svg/element.js";
import { figureDocument } from "../svg/figure-document.js";
import { point } from "../svg/point.js";
import { circle, line, polygon } from "../svg/shapes.js";
import { SERIES_DASHES } from "../theme.js";
import { MOST_LABEL_ROOM } from "./acceleration-panel.js";
import { endLabels, endLabelsHeight, endLabelsRoom } from "./end-labels.js";
import type { OrderPicture } from "./order-picture.js";
import { fittingTicks, type Plot, plotIn, xAxis, yAxis, yAxisRoom } from "./plot.js";

const LEAST_HEIGHT = 250;
const TICKS = 6;
/** How far the chart runs on beyond the greatest speed asked about, and to which step. */
const BEYOND = 1.1;
const SPEED_STEP = 10;

/** One order of one part: a straight line through standstill. */
interface OrderLine {
  readonly name: string;
  /** Hz at the marked speed. */
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly colour: string;
  readonly dash: string | undefined;
}

function linesOf({ parts }: OrderPicture, { theme, labels: { numbers } }: Sheet): readonly OrderLine[] {
  return parts.flatMap(({ name, rate, orders }, k) =>
    [rate.value, rate.low, rate.high].every(Number.isFinite)
      ? orders.map((order) => ({
          name: `${name} ${numbers.plain(order, Number.isInteger(order) ? 0 : 1)}`,
          value: order * rate.value,
          low: order * rate.low,
          high: order * rate.high,
          colour: theme.series[k % theme.series.length] as string,
          dash: SERIES_DASHES[k % SERIES_DASHES.length],
        }))
      : [],
  );
}

/** Frequency of every order against road speed, from standstill; the complaint's speeds shaded and one speed marked. */
export function orderLines(picture: OrderPicture, options: FigureOptions): string {
  const sheet = sheetOf(options);
  const { labels, theme, left, right } = sheet;
  const { speed, complaint, unit } = shownSpeeds(picture, sheet);
  const lines = linesOf(picture, sheet);
  const maxSpeed = Math.ceil((Math.max(speed, complaint?.[1] ?? 0) * BEYOND) / SPEED_STEP) * SPEED_STEP;
  const yDomain = [0, Math.max(1, ...lines.map(({ high }) => (high * maxSpeed) / speed))] as const;
  const remarks = remarksOf(picture, sheet);
  const head = caption(sheet, 14, labels.frequencyAxis, remarks);
  const top = 14 + head.height + 14;
  const named = lines.map(({ name, value, colour }) => ({ value, colour, content: `${frequency(value, sheet)} ${name}` }));
  const plot = plotIn({
    left: left + yAxisRoom(yDomain, sheet, TICKS),
    right: right - endLabelsRoom(named, sheet.width * MOST_LABEL_ROOM),
    top,
    bottom: top + Math.max(LEAST_HEIGHT, endLabelsHeight(lines.length)),
    xDomain: [0, maxSpeed],
    yDomain,
  });
  const atEnd = (value: number): number => plot.y((value * maxSpeed) / speed);
  return figureDocument(sheet, {
    title: labels.orderChart,
    description: [`${remarks}.`, `${lines.map(({ name, value }) => labels.item(name, `${frequency(value, sheet)} Hz`)).join("; ")}.`],
    height: plot.bottom + 50,
    body: [
      complaint === null ? "" : shade(plot, complaint, sheet),
      head.svg,
      yAxis(plot, sheet, TICKS),
      ...lines.map(({ low, high, colour }) =>
        polygon([point(plot.x(0), plot.y(0)), point(plot.right, atEnd(low)), point(plot.right, atEnd(high))], {
          fill: colour,
          "fill-opacity": "0.16",
        }),
      ),
      ...lines.map(({ value, colour, dash }) =>
        line(point(plot.x(0), plot.y(0)), point(plot.right, atEnd(value)), { stroke: colour, "stroke-width": 2, "stroke-dasharray": dash }),
      ),
      line(point(plot.x(speed), plot.top), point(plot.x(speed), plot.bottom), { stroke: theme.ink, "stroke-width": 1.4 }),
      ...lines.map(({ value, colour }) => circle(point(plot.x(speed), plot.y(value)), 3, { fill: colour })),
      endLabels(
        named.map(({ value, ...label }) => ({ ...label, y: atEnd(value) })),
        plot.right,
        right,
        plot.top - 8,
        plot.bottom + 8,
        theme,
      ),
      xAxis(plot, fittingTicks(plot, sheet), labels.roadSpeedAxis(unit), sheet),
    ],
  });
}

const frequency = (value: number, { labels: { numbers } }: Sheet): string => numbers.plain(value, Math.abs(value) < 99.95 ? 1 : 0);

/** Digits beyond these are the rounding of the way to miles. */
const SIGNIFICANT_DIGITS = 12;
const MILES_PER_KILOMETRE = toSi(1, "km/h") / toSi(1, "mph");
const inMiles = (kmh: number): number => Number((kmh * MILES_PER_KILOMETRE).toPrecision(SIGNIFICANT_DIGITS));

interface ShownSpeeds {
  readonly speed: number;
  readonly complaint: OrderPicture["complaintKmh"];
  readonly unit: FigureNumbers["speedUnit"];
}

/** The speeds of a picture in the unit of its axis. */
function shownSpeeds({ speedKmh, complaintKmh }: OrderPicture, { labels }: Sheet): ShownSpeeds {
  const unit = labels.numbers.speedUnit;
  if (unit === "km/h") return { speed: speedKmh, complaint: complaintKmh, unit };
  return { speed: inMiles(speedKmh), complaint: complaintKmh && [inMiles(complaintKmh[0]), inMiles(complaintKmh[1])], unit };
}

function remarksOf(picture: OrderPicture, sheet: Sheet): string {
  const { labels } = sheet;
  const { speed, complaint, unit } = shownSpeeds(picture, sheet);
  const plain = (value: number): string => labels.numbers.plain(value, Number.isInteger(value) ? 0 : 1);
  const shaded = complaint === null ? [] : [labels.shadedComplaint(plain(complaint[0]), `${plain(complaint[1])} ${unit}`)];
  return [labels.numbersAt(`${plain(speed)} ${unit}`), ...shaded, labels.bandIs95].join(". ");
}

/** A complaint felt at a single speed is a band all the same, two pixels wide. */
function shade({ x, top, bottom }: Plot, [from, to]: readonly [number, number], { theme }: Sheet): string {
  return element("rect", {
    x: x(from),
    y: top,
    width: Math.max(2, x(to) - x(from)),
    height: bottom - top,
    fill: theme.doubt,
    "fill-opacity": "0.18",
  });
}
