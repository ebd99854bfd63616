import { type Case, latestGaugings, restore, toAnalysisInput } from "@halfturn/casefile";
import { analyseDriveline } from "@halfturn/engine/analysis";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import type { Language } from "@halfturn/words";
import type { DrivelinePicture } from "./driveline/driveline-picture.js";
import { drivelinePictureOf } from "./driveline/picture-of.js";

const SETTINGS = { defaults: DEFAULT_LIMITS, draws: 20_000, seed: 1 };

/** The pictures of a case file's drivelines by their latest gauging, analysed as the tool does it. */
export function examplePictures(file: unknown, language: Language): DrivelinePicture[] {
  const restored = restore(file);
  if (!restored.ok) throw new Error("the example does not read");
  const document: Case = restored.case;
  return latestGaugings(document).map((chosen) =>
    drivelinePictureOf({
      case: document,
      driveline: chosen.driveline,
      gauging: chosen.gauging,
      analysis: analyseDriveline(toAnalysisInput(document, chosen, SETTINGS)),
      language,
    }),
  );
}
