import type { PausedWork } from "@halfturn/engine/uncertainty";
import type { Clock, Recording } from "../recording.js";
import { type RecordingResult, recordingValue } from "../recording-result.js";
import { gatherSamples, type Samples } from "./gather-samples.js";
import { withoutRepeats } from "./without-repeats.js";

/** A channel as it was taken: times that rise, and values. */
export interface SlowChannel {
  readonly times: Float64Array;
  readonly values: Float64Array;
  readonly notes: Samples["notes"];
}

/** Reads a speed or a tachometer on its own clock: samples without a value are left out (a slow column is empty in most rows), and of several at one time the first stays. */
export async function slowChannel(
  recording: Recording,
  track: number,
  channel: number,
  work: PausedWork = {},
): Promise<RecordingResult<SlowChannel>> {
  const gathered = await gatherSamples(recording, track, channel, work);
  if (!gathered.ok) return gathered;
  const { clock, values, notes } = gathered.value;
  const times = gathered.value.times ?? evenTimes(clock, values.length);
  await work.pause?.();
  work.signal?.throwIfAborted();
  const stamped = withoutRepeats(times, values);
  return recordingValue({ times: stamped.times, values: stamped.values, notes });
}

function evenTimes(clock: Clock, count: number): Float64Array {
  const times = new Float64Array(count);
  if (clock.kind === "even") for (let k = 0; k < count; k++) times[k] = clock.start + k / clock.rate;
  return times;
}
