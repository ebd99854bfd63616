import type { LongWork } from "@halfturn/engine/uncertainty";
import type { Recording } from "../recording.js";
import { type RecordingResult, recordingValue } from "../recording-result.js";
import { gatherSamples, type Samples } from "./gather-samples.js";

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
  work?: LongWork,
): Promise<RecordingResult<SlowChannel>> {
  const gathered = await gatherSamples(recording, track, channel, work);
  if (!gathered.ok) return gathered;
  const { clock, values, notes } = gathered.value;
  const times = gathered.value.times ?? values.map((_, k) => (clock.kind === "even" ? clock.start + k / clock.rate : 0));
  const fresh = (_: number, k: number): boolean => k === 0 || times[k] !== times[k - 1];
  return recordingValue({ times: times.filter(fresh), values: values.filter(fresh), notes });
}
