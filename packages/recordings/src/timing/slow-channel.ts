import type { Finding } from "@halfturn/engine/findings";
import type { PausedWork } from "@halfturn/engine/uncertainty";
import type { Recording } from "../recording.js";
import { type RecordingResult, recordingValue } from "../recording-result.js";
import { evenTimes, gatherSamples } from "./gather-samples.js";
import type { Column } from "./long-column.js";
import { MEMORY, type SpoolRoom } from "./sample-spool.js";
import { type Stamped, withoutRepeats } from "./without-repeats.js";

/** A channel as it was taken: times that rise, and values. */
export interface SlowChannel {
  readonly times: Float64Array;
  readonly values: Float64Array;
  readonly notes: readonly Finding[];
}

/** The same, fetched as it is needed. */
export interface SlowColumns extends Stamped {
  readonly notes: readonly Finding[];
}

/** Reads a speed or a tachometer on its own clock: samples without a value are left out (a slow column is empty in most rows), and of several at one time the first stays. */
export async function slowColumns(
  recording: Recording,
  track: number,
  channel: number,
  room: SpoolRoom,
  work: PausedWork = {},
): Promise<RecordingResult<SlowColumns>> {
  const gathered = await gatherSamples(recording, track, channel, room, work);
  if (!gathered.ok) return gathered;
  const { clock, times, values, repeats, notes } = gathered.value;
  const read = (first: number, out: Float64Array): void => out.set(evenTimes(clock, first, out.length));
  const stamped: Stamped = { times: times ?? ({ length: values.length, read } satisfies Column), values };
  if (repeats === 0) return recordingValue({ ...stamped, notes });
  const kept = await withoutRepeats(stamped, room, work);
  values.close();
  times?.close();
  return recordingValue({ ...kept, notes });
}

/** As slowColumns, held in memory. */
export async function slowChannel(
  recording: Recording,
  track: number,
  channel: number,
  work: PausedWork = {},
): Promise<RecordingResult<SlowChannel>> {
  const slow = await slowColumns(recording, track, channel, MEMORY, work);
  if (!slow.ok) return slow;
  const { times, values, notes } = slow.value;
  return recordingValue({ times: heldNumbers(times), values: heldNumbers(values), notes });
}

/** A column in memory. */
export function heldNumbers(column: Column): Float64Array {
  const numbers = new Float64Array(column.length);
  column.read(0, numbers);
  return numbers;
}
