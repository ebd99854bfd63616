import type { Finding } from "@halfturn/engine/findings";
import type { LongWork } from "@halfturn/engine/uncertainty";
import type { Clock, Recording } from "../recording.js";
import { type RecordingResult, recordingFault, recordingValue } from "../recording-result.js";
import { sampleBuffer } from "./sample-buffer.js";

/** A channel's samples that have a value, and when they were taken. */
export interface Samples {
  /** Seconds, never falling; null where nothing is missing on an even clock. */
  readonly times: Float64Array | null;
  readonly values: Float64Array;
  /** Samples that the file holds without a value. */
  readonly missing: number;
  readonly clock: Clock;
  readonly notes: readonly Finding[];
}

/** More than fits into memory beside what is done with it: 12 hours at 10 kHz. */
const MOST_SAMPLES = 432_000_000;

/** Reads one channel into memory. Faults of the reader; recording.time-backwards; recording.no-samples where nothing has a value. */
export async function gatherSamples(
  recording: Recording,
  track: number,
  channel: number,
  work?: LongWork,
): Promise<RecordingResult<Samples>> {
  const clock = recording.tracks[track]?.clock;
  // A programmer error: tracks and channels come from the recording itself.
  if (clock === undefined) throw new RangeError(`no track ${track}`);
  const values = sampleBuffer();
  const times = sampleBuffer();
  const notes: Finding[] = [];
  let [taken, before] = [0, Number.NEGATIVE_INFINITY];
  for await (const block of recording.read({ track, channels: [channel] }, work)) {
    if (!block.ok) return block;
    const { first, notes: found } = block.value;
    const [here] = block.value.values as readonly [Float64Array];
    const stamps = block.value.times ?? here.map((_, k) => (clock.kind === "even" ? clock.start + (first + k) / clock.rate : 0));
    const back = stamps.findIndex((time, k) => time < ((k > 0 ? stamps[k - 1] : before) as number));
    if (back >= 0) {
      const time = stamps[back] as number;
      return recordingFault("recording.time-backwards", "time", {
        sample: first + back + 1,
        time,
        before: (stamps[back - 1] ?? before) as number,
      });
    }
    before = stamps.at(-1) ?? before;
    taken += here.length;
    if (taken > MOST_SAMPLES) return recordingFault("recording.too-many", "", { of: "samples", limit: MOST_SAMPLES });
    times.push(stamps.filter((_, k) => Number.isFinite(here[k])));
    values.push(here.filter(Number.isFinite));
    notes.push(...found);
  }
  const whole = values.whole();
  if (whole.length === 0) return recordingFault("recording.no-samples", "", {});
  const missing = taken - whole.length;
  return recordingValue({ times: clock.kind === "even" && missing === 0 ? null : times.whole(), values: whole, missing, clock, notes });
}
