import type { Case } from "@halfturn/casefile";
import type { SignalResult } from "@halfturn/engine/signal";
import { inPieces, type LongWork } from "@halfturn/engine/uncertainty";
import { figureLabelsOf, vibrationMap, vibrationPictureSteps } from "@halfturn/figures";
import type { Catalogue } from "@halfturn/words";
import { pause } from "../program/pause.js";
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
  const picture = await inPieces(vibrationPictureSteps(heard, document, labels), { signal, pause });
  return picture.ok ? { ok: true, value: vibrationMap(picture.value, { labels, width: WIDTH }) } : picture;
}
