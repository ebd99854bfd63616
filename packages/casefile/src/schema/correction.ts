import { z } from "zod";
import { quantity } from "./quantity.js";
import { id, jointId, moment, name } from "./scalars.js";

const sectionAcceleration = z.object({ section: id, accelerationRadS2: quantity });

/** What was foretold of one driveline in one state. */
const predictedDriveline = z.object({
  driveline: id,
  /** How the shafts will lie, in power order: enough to draw them. */
  shafts: z
    .array(z.object({ id, inclinationDeg: quantity, headingDeg: quantity }))
    .max(7)
    .optional(),
  joints: z.array(z.object({ id: jointId, operatingAngleDeg: quantity })).max(6),
  equivalentAngleDeg: quantity,
  slipTravelMm: quantity,
  /** Accelerations at the highest shaft speed in use. */
  highestSpeed: z
    .object({
      shaftRpm: z.number().gt(0),
      drivenAccelerationRadS2: quantity,
      drive: z.array(sectionAcceleration).max(5),
      coast: z.array(sectionAcceleration).max(5),
    })
    .optional(),
});

/** One use of an adjuster; the amount is signed as the adjuster's stock is. */
const change = z.object({ adjuster: id, amount: z.number(), unit: z.enum(["deg", "mm", "step"]) });

/** A step of the work as it was printed, so that a later version of the program prints the same. */
const instruction = z.object({ code: name, params: z.looseObject({}), cautions: z.array(name).max(20).optional() });

/** A correction that was chosen, and what was foretold of it: kept to be held against the next gauging. */
export const correction = z.object({
  /** chosen: to be made. made: made, whether or not it was gauged again. */
  state: z.enum(["chosen", "made"]),
  chosenAt: moment,
  madeAt: moment.optional(),
  /** The gauging of each driveline that it was worked out from, by its place in `gauging`. */
  basis: z
    .array(z.object({ driveline: id, gauging: z.int().min(0).max(10_000) }))
    .min(1)
    .max(8),
  changes: z.array(change).max(20),
  /** Share of the draws in which every limit held in every state; null where something that could forbid it was not measured. */
  probabilityWithin: z.number().min(0).max(1).nullable().optional(),
  /** The same for the limits that could be computed. */
  probabilityOfLimits: z.number().min(0).max(1).optional(),
  predicted: z.array(z.object({ state: id, drivelines: z.array(predictedDriveline).max(8) })).max(51),
  instructions: z.array(instruction).max(200).optional(),
});
