import { type Case, latestGaugings, ordersToJson, restore, toAnalysisInput, toPowertrain } from "@halfturn/casefile";
import { analyseDriveline } from "@halfturn/engine/analysis";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { toSi } from "@halfturn/engine/units";
import type { Language } from "@halfturn/words";
import { type OrderPicture, orderPictureOf } from "./chart/order-picture.js";
import type { DrivelinePicture } from "./driveline/driveline-picture.js";
import { drivelinePictureOf } from "./driveline/picture-of.js";
import { figureLabelsOf } from "./words/labels-of.js";

const SETTINGS = { defaults: DEFAULT_LIMITS, draws: 20_000, seed: 1 };

/** The pictures of a case file's drivelines by their latest gauging, analysed as the tool does it. */
export function examplePictures(file: unknown, language: Language): DrivelinePicture[] {
  const document = exampleOf(file);
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

/** The picture of a case file's orders at a road speed, in the gear of the complaint. */
export function exampleOrders(file: unknown, speedKmh: number, language: Language): OrderPicture {
  const document = exampleOf(file);
  const basis = toPowertrain(document, { speed: toSi(speedKmh, "km/h") });
  if (!basis.ok) throw new Error("the example has no orders");
  return orderPictureOf(ordersToJson(basis.powertrain, { speedKmh, wheelTurns: 100 }), document, figureLabelsOf(language));
}

function exampleOf(file: unknown): Case {
  const restored = restore(file);
  if (!restored.ok) throw new Error("the example does not read");
  return restored.case;
}
