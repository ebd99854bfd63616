import { z } from "zod";
import { text } from "./scalars.js";

const angleDeg = z.number().min(0).lt(90).optional();
const accelerationRadS2 = z.number().gt(0).max(1e6).optional();

/** Overrides of the built-in limits, one key for each. `source` says where they come from. */
export const limits = z.object({
  source: text.optional(),
  jointAccelerationRadS2: accelerationRadS2,
  crossMaximumDeg: angleDeg,
  doubleCrossMaximumDeg: angleDeg,
  ballMaximumDeg: angleDeg,
  flexibleMaximumDeg: angleDeg,
  crossMinimumDeg: angleDeg,
  doubleCrossMinimumDeg: angleDeg,
  ballMinimumDeg: angleDeg,
  flexibleMinimumDeg: angleDeg,
  equivalentMaximumDeg: angleDeg,
  drivenAccelerationWarnRadS2: accelerationRadS2,
  drivenAccelerationOverRadS2: accelerationRadS2,
  inertiaDriveRadS2: accelerationRadS2,
  inertiaCoastRadS2: accelerationRadS2,
  benchMetDeg: angleDeg,
  benchAcceptedDeg: angleDeg,
});
