import { planView } from "./driveline/plan-view.js";
import { sideView } from "./driveline/side-view.js";
import { SAMPLE_LABELS } from "./sample-labels.test-support.js";
import { SAMPLES, samplePicture } from "./sample-drivelines.test-support.js";
import type { ThemeName } from "./theme.js";

/** Every figure of every sample driveline, by name. */
export function sampleFigures({ theme, width }: { theme: ThemeName; width: number }): Record<string, string> {
  const options = { labels: SAMPLE_LABELS, theme, width };
  return Object.fromEntries(
    Object.entries(SAMPLES).flatMap(([name, sample]) => {
      const picture = samplePicture(sample);
      return [
        [`${name}-side`, sideView(picture, options)],
        [`${name}-plan`, planView(picture, options)],
      ];
    }),
  );
}
