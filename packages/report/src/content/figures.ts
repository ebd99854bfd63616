import {
  accelerationChart,
  cancellationView,
  drivelinePictureOf,
  type FigureOptions,
  figureLabelsOf,
  phasingView,
  planView,
  sideView,
  transmissionErrorChart,
} from "@halfturn/figures";
import type { Figure } from "./blocks.js";
import type { ReportInput } from "./report-input.js";
import type { Subject } from "./subject.js";

const ENTITIES: Readonly<Record<string, string>> = { "&lt;": "<", "&gt;": ">", "&quot;": '"', "&#39;": "'", "&apos;": "'", "&amp;": "&" };

/** What a figure says of itself to somebody who does not see it. */
function descriptionOf(svg: string): string {
  const [, escaped = ""] = /<desc>([^<]*)<\/desc>/.exec(svg) ?? [];
  return escaped.replace(/&(?:lt|gt|quot|#39|apos|amp);/g, (entity) => ENTITIES[entity] as string).trim();
}

/** A drawn figure with its caption. */
export const figureOf = (caption: string, svg: string): Figure => ({ kind: "figure", svg, caption, alt: descriptionOf(svg) || caption });

/** How a report's figures are drawn: in the theme for paper, which a screen in the dark shows on white. */
export const reportFigureOptions = ({ language, units, figureWidth }: ReportInput): FigureOptions => ({
  labels: figureLabelsOf(language, units),
  theme: "print",
  ...(figureWidth === undefined ? {} : { width: figureWidth }),
});

/** Every view of a gauged driveline. */
export function figureBlocks(subject: Subject): readonly Figure[] {
  const { report, gauging, analysis } = subject;
  const options = reportFigureOptions(report);
  const { labels } = options;
  const picture = drivelinePictureOf({ case: report.case, driveline: subject.index, gauging, analysis, language: report.language });
  const views: readonly (readonly [caption: string, svg: string])[] = [
    [labels.sideView, sideView(picture, options)],
    [labels.planView, planView(picture, options)],
    [labels.phasingView, phasingView(picture, options)],
    [labels.cancellationView, cancellationView(picture, options)],
    [labels.transmissionErrorChart, transmissionErrorChart(picture, options)],
    [labels.accelerationChart, accelerationChart(picture, subject.input.limits, options)],
  ];
  return views.map(([caption, svg]) => figureOf(caption, svg));
}
