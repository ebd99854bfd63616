import type { DrivelinePicture } from "../driveline/driveline-picture.js";
import { type FigureOptions, type Sheet, sheetOf } from "../figure-options.js";
import { caption } from "../layout/caption.js";
import { figureDocument } from "../svg/figure-document.js";
import { accelerationPanel, panelEdges } from "./acceleration-panel.js";
import { type AccelerationLimits, type AccelerationPanel, type AccelerationPoint, accelerationPanels } from "./acceleration-series.js";

const DEFAULT_MAXIMUM_RPM = 3000;

function sentences({ title, series, unknown, limits }: AccelerationPanel, { labels }: Sheet): string {
  const lines = series.map(({ name, points }) => {
    const { rpm, estimate } = points[points.length - 1] as AccelerationPoint;
    return labels.item(name, `${labels.numbers.acceleration(estimate.value)} (${labels.numbers.speed(rpm)})`);
  });
  const bounds = limits.map(({ name, value }) => `${name} ${labels.numbers.acceleration(value)}`);
  return `${title}. ${[...lines, ...unknown.map((name) => labels.item(name, labels.notKnown)), ...bounds].join("; ")}.`;
}

/** Peak angular acceleration against shaft speed, one chart for each limit: the driven end, the sections on drive, the sections and the source on coast. */
export function accelerationChart(picture: DrivelinePicture, limits: AccelerationLimits, options: FigureOptions): string {
  const sheet = sheetOf(options);
  const { labels } = sheet;
  const panels = accelerationPanels(picture, limits, labels);
  const speeds = panels.flatMap(({ series }) => series.flatMap(({ points }) => points.map(({ rpm }) => rpm)));
  const maxRpm = speeds.length > 0 ? Math.max(1, ...speeds) : DEFAULT_MAXIMUM_RPM;
  const head = caption(sheet, 14, labels.accelerationAxis, labels.bandIs95);
  const edges = panelEdges(panels, sheet);
  let y = 14 + head.height + 14;
  const drawn = panels.map((panel, k) => {
    const { svg, bottom } = accelerationPanel(panel, y, maxRpm, k === panels.length - 1, edges, sheet);
    y = bottom + 18;
    return svg;
  });
  return figureDocument(sheet, {
    title: labels.accelerationChart,
    description: panels.map((panel) => sentences(panel, sheet)),
    height: y - 4,
    body: [head.svg, ...drawn],
  });
}
