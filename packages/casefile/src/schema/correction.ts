import { z } from "zod";
import { id, jointId, moment, name } from "./scalars.js";

const quantity = z.object({ value: z.number(), u: z.number().min(0), interval95: z.tuple([z.number(), z.number()]) }).nullable();

/** What was foretold of one driveline in one state. */
const predictedDriveline = z.object({
  driveline: id,
  joints: z.array(z.object({ id: jointId, operatingAngleDeg: quantity })).max(6),
  equivalentAngleDeg: quantity,
  slipTravelMm: quantity,
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
  predicted: z.array(z.object({ state: id, drivelines: z.array(predictedDriveline).max(8) })).max(51),
  instructions: z.array(instruction).max(200).optional(),
});
