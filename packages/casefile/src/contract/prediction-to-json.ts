import type { MissingMeasurement, PredictedDriveline, PredictedState, Prediction } from "@halfturn/engine/correction";
import type { Radians } from "@halfturn/engine/units";
import { writtenChange } from "../correction/amounts.js";
import type { CorrectionBasis } from "../correction/correction-basis.js";
import type { Quantity } from "./analysis-contract.js";
import { drivelineToJson } from "./analysis-to-json.js";
import type { MissingJson, PredictedStateJson, PredictionJson } from "./correction-contract.js";
import { degrees } from "./quantity.js";

/** A prediction as `predict --json` prints it: degrees and millimetres, quantities with their uncertainty. */
export const predictionToJson = (prediction: Prediction, basis: CorrectionBasis): PredictionJson => ({
  format: "halfturn-prediction",
  version: 1,
  seed: basis.input.seed,
  changes: prediction.changes.map((change) => writtenChange(basis.input, change)),
  states: prediction.states.map((state) => stateToJson(state, basis)),
  blockedBy: prediction.blocked,
  missing: prediction.missing.map(missingToJson),
  leftOut: prediction.leftOut,
  learnedFrom: learnedFrom(basis),
});

/** The corrections whose gauging after taught the lengths and arms in use. */
export const learnedFrom = ({ taught }: Pick<CorrectionBasis, "taught">): readonly number[] =>
  taught.kind === "learned" ? taught.from : [];

export const stateToJson = (
  { id, drivelines }: PredictedState,
  { document, chosen }: Pick<CorrectionBasis, "document" | "chosen">,
): PredictedStateJson => ({
  id,
  drivelines: drivelines.map((driveline) => {
    const gauging = chosen.find((one) => document.drivelines[one.driveline]?.id === driveline.drivelineId)?.gauging ?? null;
    const stage = gauging === null ? null : (document.gauging?.[gauging]?.stage ?? null);
    return {
      ...drivelineToJson({ analysis: driveline, stage, gauging }),
      slipTravelMm: slipTravelMm(driveline),
      slipVerdict: driveline.slipVerdict,
      geometry: driveline.geometry,
    };
  }),
});

/** Travel of the slip spline, + = pulled out. */
export const slipTravelMm = ({ slipTravel }: Pick<PredictedDriveline, "slipTravel">): Quantity =>
  slipTravel && {
    value: slipTravel.value * 1000,
    u: slipTravel.u * 1000,
    interval95: [slipTravel.low * 1000, slipTravel.high * 1000],
  };

export const missingToJson = ({ of, path, effect }: MissingMeasurement): MissingJson => ({
  of,
  path,
  effectDeg: effect === null ? null : degrees(effect as Radians),
});
