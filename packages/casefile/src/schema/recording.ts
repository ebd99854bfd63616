import { z } from "zod";
import { quantity } from "./quantity.js";
import { moment, name, text } from "./scalars.js";

/** What is known of a channel that its file does not say. `id` is the file's own name of it. */
const channel = z.object({
  id: name,
  /** What it is called instead; may carry a unit, or `tacho_PART`. */
  name: name.optional(),
  unit: name.optional(),
  /** What a raw 1 stands for, in the unit: of a sound file, full scale. */
  fullScale: z.number().gt(0).max(1e9).optional(),
  /** Raw units per unit, as the sensor's sheet says. */
  sensitivity: z.number().gt(0).max(1e9).optional(),
});

const share = z.number().min(0).max(1);
const order = z.object({ part: name, order: z.number().gt(0).max(1000) });

/** What was heard in a recording: kept so that a report says it without the samples. */
const heard = z.object({
  at: moment,
  durationS: z.number().gt(0),
  sampleRateHz: z.number().gt(0),
  /** Nothing above this can be seen. */
  bandHz: z.number().gt(0),
  /** The channel that the amplitudes are of. */
  channel: name,
  /** The column that told the speed; `vibration` where it was followed in the vibration itself. */
  speedFrom: name,
  gear: name.optional(),
  verdict: order.extend({ probability: share }).nullable(),
  /** Why no order is named, and among which it remains open. */
  abstained: z.object({ reason: name, between: z.array(order).max(100) }).nullable(),
  contributions: z
    .array(
      order.extend({
        frequencyHz: z.tuple([z.number().min(0), z.number().min(0)]),
        observable: z.boolean(),
        amplitudeMS2: quantity,
        share: share.nullable(),
        probability: share.nullable(),
      }),
    )
    .max(200),
  unexplainedShare: share,
});

/** A recording on the road. The samples stay in their own file. */
export const recording = z.object({
  /** Its name, with or without folders. */
  file: z.string().min(1).max(1000),
  label: text.optional(),
  recordedAt: moment.optional(),
  /** Label of the gear driven. */
  gear: name.optional(),
  /** For every channel that has none of its own. */
  unit: name.optional(),
  fullScale: z.number().gt(0).max(1e9).optional(),
  channels: z.array(channel).max(256).optional(),
  /** Marks that pass the tachometer in one turn of its part; 1 when left out. */
  pulsesPerTurn: z.number().gt(0).max(10_000).optional(),
  /** -3 dB of the sensor's filter, where its sheet gives it. */
  filterHz: z.number().gt(0).max(1e6).optional(),
  heard: heard.optional(),
  notes: text.optional(),
});
