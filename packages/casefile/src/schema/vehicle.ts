import { z } from "zod";
import { id, name, notHere, offsetMm, positiveMm, ratio, text } from "./scalars.js";
import { variant } from "./variant.js";

/** A measured circumference wins over a size; the size may stand beside it as a label. */
const tyre = variant(
  [z.object({ rollingCircumferenceMm: positiveMm, size: name.optional() }), z.object({ size: name, rollingCircumferenceMm: notHere })],
  (value) => (Object.hasOwn(value, "rollingCircumferenceMm") ? 0 : 1),
);

/** Where the powertrain pivots and where its rear mount stands, from the first joint centre of `drivelines[0]`, vehicle forward and up. */
const powertrain = z.object({
  pivotForwardMm: offsetMm,
  pivotUpMm: offsetMm,
  mountForwardMm: offsetMm,
  mountUpMm: offsetMm,
});

/** Something the engine drives by belt or gear: its turns for one of the engine. */
const accessory = z.object({ id, label: text.optional(), ratio });

export const vehicle = z.object({
  label: text.optional(),
  axleRatio: ratio.optional(),
  gears: z
    .array(z.object({ label: name, ratio }))
    .max(40)
    .optional(),
  transferRatio: ratio.optional(),
  tyre: tyre.optional(),
  cylinders: z.int().min(1).max(24).optional(),
  accessories: z.array(accessory).max(40).optional(),
  /** Share by which a slipping torque converter or clutch may let the engine run ahead, at most. */
  slipShare: z.number().min(0).lt(1).optional(),
  maxShaftSpeedRpm: z.number().gt(0).max(20_000).optional(),
  powertrain: powertrain.optional(),
});

export const complaint = z.object({
  speedKmh: z.tuple([z.number().min(0).max(400), z.number().min(0).max(400)]).optional(),
  gear: name.optional(),
  feel: z.array(name).max(40).optional(),
  load: name.optional(),
  notes: text.optional(),
});
