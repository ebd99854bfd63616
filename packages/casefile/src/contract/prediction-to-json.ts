import type { CorrectionInput, MissingMeasurement, PredictedDriveline, PredictedState, Prediction } from "@halfturn/engine/correction";
import type { Radians } from "@halfturn/engine/units";
import type { ChosenGauging } from "../convert/latest-gaugings.js";
import { writtenChange } from "../correction/amounts.js";
import type { Case } from "../schema/case.js";
import type { Quantity } from "./analysis-contract.js";
import { drivelineToJson } from "./analysis-to-json.js";
import type { MissingJson, PredictedStateJson, PredictionJson } from "./correction-contract.js";
import { degrees } from "./quantity.js";

/** What a prediction was made from. */
export interface CorrectionBasis {
  readonly document: Case;
  readonly input: CorrectionInput;
  readonly chosen: readonly ChosenGauging[];
}

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
});

export const stateToJson = ({ id, drivelines }: PredictedState, { document, chosen }: CorrectionBasis): PredictedStateJson => ({
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
