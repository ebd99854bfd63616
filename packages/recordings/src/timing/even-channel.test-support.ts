import type { SampleReader, TimeSignal } from "@halfturn/engine/signal";
import type { PausedWork } from "@halfturn/engine/uncertainty";
import type { Recording } from "../recording.js";
import { type RecordingResult, recordingValue } from "../recording-result.js";
import { type EvenReaders, evenReaders } from "./even-readers.js";
import { MEMORY } from "./sample-spool.js";

/** A channel on even steps of time, held in memory, and what its clock was like. */
export interface EvenChannel extends Omit<EvenReaders, "runs"> {
  /** In order of time, one per stretch without a gap. */
  readonly runs: readonly TimeSignal[];
}

/** As evenReaders, with all samples in memory. */
export async function evenChannel(
  recording: Recording,
  track: number,
  channel: number,
  work: PausedWork = {},
): Promise<RecordingResult<EvenChannel>> {
  const even = await evenReaders(recording, track, channel, MEMORY, work);
  return even.ok ? recordingValue({ ...even.value, runs: even.value.runs.map(heldSignal) }) : even;
}

function heldSignal({ rate, start, length, read }: SampleReader): TimeSignal {
  const samples = new Float64Array(length);
  read(0, samples);
  return { samples, rate, start };
}
