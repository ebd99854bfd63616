import type { Estimate } from "@halfturn/engine/analysis";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import type { Language } from "@halfturn/words";
import { cancellationView } from "./cancellation/cancellation-view.js";
import { accelerationChart } from "./chart/acceleration-chart.js";
import { orderLines } from "./chart/order-lines.js";
import { transmissionErrorChart } from "./chart/transmission-error-chart.js";
import { comparisonView } from "./driveline/comparison-view.js";
import type { DrivelinePicture } from "./driveline/driveline-picture.js";
import { planView } from "./driveline/plan-view.js";
import { sideView } from "./driveline/side-view.js";
import { exampleOrders, examplePictures } from "./example-figures.test-support.js";
import type { FigureOptions } from "./figure-options.js";
import { phasingView } from "./phasing/phasing-view.js";
import { SAMPLES, samplePicture } from "./sample-drivelines.test-support.js";
import type { ThemeName } from "./theme.js";
import { figureLabelsOf } from "./words/labels-of.js";

/** Every figure there is, by name. */
export const ALL_FIGURES: Readonly<Record<string, (picture: DrivelinePicture, options: FigureOptions) => string>> = {
  side: sideView,
  plan: planView,
  phasing: phasingView,
  acceleration: (picture, options) => accelerationChart(picture, DEFAULT_LIMITS, options),
  "transmission-error": transmissionErrorChart,
  cancellation: cancellationView,
  comparison: (picture, options) =>
    comparisonView(
      [
        { name: "As found", picture },
        { name: "Predicted", picture: flattened(picture) },
      ],
      options,
    ),
};

/** The driveline with half of every inclination, as a correction might leave it. */
function flattened(picture: DrivelinePicture): DrivelinePicture {
  const half = (estimate: Estimate | null): Estimate | null =>
    estimate && { value: estimate.value / 2, u: estimate.u, low: estimate.low / 2, high: estimate.high / 2 };
  const { analysis } = picture;
  if (!analysis) return picture;
  return { ...picture, analysis: { ...analysis, shafts: analysis.shafts.map((one) => ({ ...one, inclination: half(one.inclination) })) } };
}

interface Look {
  readonly theme: ThemeName;
  readonly width: number;
  readonly language?: Language;
}

/** Every figure of a driveline, by name. */
export const figuresOf = (picture: DrivelinePicture, { theme, width, language = "en" }: Look): Record<string, string> =>
  Object.fromEntries(
    Object.entries(ALL_FIGURES).map(([figure, draw]) => [figure, draw(picture, { labels: figureLabelsOf(language), theme, width })]),
  );

/** Every figure of every sample driveline, by `sample-figure`; for scripts. @public */
export const sampleFigures = (look: Look): Record<string, string> =>
  Object.fromEntries(
    Object.entries(SAMPLES).flatMap(([name, sample]) =>
      Object.entries(figuresOf(samplePicture(sample), look)).map(([figure, svg]) => [`${name}-${figure}`, svg]),
    ),
  );

/** Every figure of every driveline of a case file, by `driveline-figure`; for scripts. @public */
export const caseFigures = (file: unknown, look: Look): Record<string, string> =>
  Object.fromEntries(
    examplePictures(file, look.language ?? "en").flatMap((picture) =>
      Object.entries(figuresOf(picture, look)).map(([figure, svg]) => [`${picture.driveline.id}-${figure}`, svg]),
    ),
  );

/** The orders of a case file at a road speed; for scripts. @public */
export const caseOrders = (file: unknown, speedKmh: number, { theme, width, language = "en" }: Look): string =>
  orderLines(exampleOrders(file, speedKmh, language), { labels: figureLabelsOf(language), theme, width });
