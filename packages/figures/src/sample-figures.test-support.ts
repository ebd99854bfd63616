import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { cancellationView } from "./cancellation/cancellation-view.js";
import { accelerationChart } from "./chart/acceleration-chart.js";
import { transmissionErrorChart } from "./chart/transmission-error-chart.js";
import type { DrivelinePicture } from "./driveline/driveline-picture.js";
import { planView } from "./driveline/plan-view.js";
import { sideView } from "./driveline/side-view.js";
import type { FigureOptions } from "./figure-options.js";
import { phasingView } from "./phasing/phasing-view.js";
import { SAMPLES, samplePicture } from "./sample-drivelines.test-support.js";
import { SAMPLE_LABELS } from "./sample-labels.test-support.js";
import type { ThemeName } from "./theme.js";

/** Every figure there is, by name. */
export const ALL_FIGURES: Readonly<Record<string, (picture: DrivelinePicture, options: FigureOptions) => string>> = {
  side: sideView,
  plan: planView,
  phasing: phasingView,
  acceleration: (picture, options) => accelerationChart(picture, DEFAULT_LIMITS, options),
  "transmission-error": transmissionErrorChart,
  cancellation: cancellationView,
};

/** Every figure of every sample driveline, by name. */
export function sampleFigures({ theme, width }: { theme: ThemeName; width: number }): Record<string, string> {
  const options = { labels: SAMPLE_LABELS, theme, width };
  return Object.fromEntries(
    Object.entries(SAMPLES).flatMap(([name, sample]) => {
      const picture = samplePicture(sample);
      return Object.entries(ALL_FIGURES).map(([figure, draw]) => [`${name}-${figure}`, draw(picture, options)]);
    }),
  );
}
