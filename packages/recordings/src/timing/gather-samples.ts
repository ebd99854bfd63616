import type { Finding, RecordingFault } from "@halfturn/engine/findings";
import type { PausedWork } from "@halfturn/engine/uncertainty";
import type { Clock, Recording } from "../recording.js";
import { type RecordingResult, recordingFault, recordingValue } from "../recording-result.js";
import { type LongColumn, longColumn } from "./long-column.js";
import type { SpoolRoom } from "./sample-spool.js";

/** A channel's samples that have a value, and when they were taken. */
export interface Samples {
  /** Seconds, never falling; null where nothing is missing on an even clock. */
  readonly times: LongColumn | null;
  readonly values: LongColumn;
  /** Samples that the file holds without a value. */
  readonly missing: number;
  /** Samples at the time of the one before. */
  readonly repeats: number;
  readonly clock: Clock;
  readonly notes: readonly Finding[];
}

/** Far more than any drive: 12 hours at 10 kHz. */
const MOST_SAMPLES = 432_000_000;

/** Reads one channel. Faults of the reader; recording.time-backwards; recording.no-samples where nothing has a value. */
export async function gatherSamples(
  recording: Recording,
  track: number,
  channel: number,
  room: SpoolRoom,
  work?: PausedWork,
): Promise<RecordingResult<Samples>> {
  const clock = recording.tracks[track]?.clock;
  // A programmer error: tracks and channels come from the recording itself.
  if (clock === undefined) throw new RangeError(`no track ${track}`);
  const values = longColumn(room);
  const kept = keptTimes(clock, room);
  const notes: Finding[] = [];
  let [taken, before] = [0, Number.NEGATIVE_INFINITY];
  for await (const block of recording.read({ track, channels: [channel] }, work)) {
    if (!block.ok) return block;
    const { first, notes: found } = block.value;
    const [here] = block.value.values as readonly [Float64Array];
    const stamps = block.value.times ?? evenTimes(clock, first, here.length);
    const backwards = backwardsIn(stamps, before, first);
    if (backwards !== null) return backwards;
    before = stamps.at(-1) ?? before;
    taken += here.length;
    if (taken > MOST_SAMPLES) return recordingFault("recording.too-many", "", { of: "samples", limit: MOST_SAMPLES });
    await kept.push(stamps, here, values.length);
    await values.push(here.filter(Number.isFinite));
    notes.push(...found);
  }
  if (values.length === 0) return recordingFault("recording.no-samples", "", {});
  const missing = taken - values.length;
  const times = clock.kind === "even" && missing === 0 ? null : kept.times;
  return recordingValue({ times, values, missing, repeats: kept.repeats(), clock, notes });
}

function backwardsIn(stamps: Float64Array, last: number, first: number): RecordingFault | null {
  let before = last;
  for (const [k, time] of stamps.entries()) {
    if (time < before) return recordingFault("recording.time-backwards", "time", { sample: first + k + 1, time, before });
    before = time;
  }
  return null;
}

interface KeptTimes {
  readonly times: LongColumn;
  /** Stamps of samples, of which those with a value are kept; `held`: how many samples were kept before. */
  readonly push: (stamps: Float64Array, samples: Float64Array, held: number) => Promise<void>;
  readonly repeats: () => number;
}

/** Times of the samples that have a value; those of an even clock are written down only once a value is missing. */
function keptTimes(clock: Clock, room: SpoolRoom): KeptTimes {
  const times = longColumn(room);
  let [repeats, before] = [0, Number.NaN];
  return {
    times,
    repeats: () => repeats,
    push: async (stamps, samples, held) => {
      const whole = samples.every(Number.isFinite);
      if (clock.kind === "even" && whole && times.length === 0) return;
      for (let first = times.length; first < held; first += AT_ONCE)
        await times.push(evenTimes(clock, first, Math.min(AT_ONCE, held - first)));
      const own = whole ? stamps : stamps.filter((_, k) => Number.isFinite(samples[k]));
      for (const time of own) {
        if (time === before) repeats++;
        before = time;
      }
      await times.push(own);
    },
  };
}

/** Times written down together. */
const AT_ONCE = 65_536;

/** Moments of samples of an even clock, seconds. */
export function evenTimes(clock: Clock, first: number, count: number): Float64Array {
  const times = new Float64Array(count);
  if (clock.kind === "even") for (let k = 0; k < count; k++) times[k] = clock.start + (first + k) / clock.rate;
  return times;
}
