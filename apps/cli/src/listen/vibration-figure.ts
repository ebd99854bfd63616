import type { Case } from "@halfturn/casefile";
import type { SignalResult } from "@halfturn/engine/signal";
import type { LongWork } from "@halfturn/engine/uncertainty";
import { figureLabelsOf, vibrationMap, vibrationPictureSteps } from "@halfturn/figures";
import type { Catalogue } from "@halfturn/words";
import type { Heard } from "./listen-to.js";

/** Wide enough for a page and a screen. */
const WIDTH = 720;

/** The picture of what was heard, drawn in pieces between which the work can be stopped. Rejects with the signal's reason. */
export async function vibrationFigure(
  heard: Heard,
  document: Case,
  { language }: Catalogue,
  { signal }: LongWork,
): Promise<SignalResult<string>> {
  const labels = figureLabelsOf(language);
  const steps = vibrationPictureSteps(heard, document, labels);
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value.ok ? { ok: true, value: vibrationMap(step.value.value, { labels, width: WIDTH }) } : step.value;
    // A timer, not a promise: the interrupt has to get its turn.
    await new Promise((resolve) => setTimeout(resolve));
    signal?.throwIfAborted();
  }
}
