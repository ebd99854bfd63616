import type { Finding } from "@halfturn/engine/findings";
import type { TimeSignal } from "@halfturn/engine/signal";
import { inPieces, type PausedWork } from "@halfturn/engine/uncertainty";
import type { Recording } from "../recording.js";
import { type RecordingResult, recordingFault, recordingValue } from "../recording-result.js";
import { gatherSamples } from "./gather-samples.js";
import { cubicAt } from "./interpolate.js";
import { isCoarse, runStart, type StampSteps, type SteadyRun, stampSteps } from "./stamp-steps.js";
import { type Stamped, withoutRepeats } from "./without-repeats.js";

/** How a channel came to even steps: as it was, by counting its samples, or by interpolation at its stamps. */
export type EvenMethod = "even" | "counted" | "interpolated";

/** A channel on even steps of time, and what its clock was like. */
export interface EvenChannel {
  /** In order of time, one per stretch without a gap. */
  readonly runs: readonly TimeSignal[];
  readonly method: EvenMethod;
  /** Samples per second as measured. */
  readonly rate: number;
  /** Root mean square distance of stamps from even steps, as a share of a step. */
  readonly jitterShare: number;
  readonly missing: number;
  readonly gaps: StampSteps["gaps"];
  readonly notes: readonly Finding[];
}

/** Fewer say nothing of a rate. */
const LEAST_SAMPLES = 16;
/** Stamps this near to even steps are even: at a quarter of the sampling rate an error of 1 % of a step is one of 1.6 % of the amplitude. */
const EVEN_SHARE = 0.01;
/** With more gaps than this share of samples there is no rate to speak of. */
const MOST_GAPS = 0.1;

/**
 * Puts a channel on even steps. Stamps within 1 % of even steps, or no further from them than they are rounded to, are counted, and a single missing
 * sample is filled by a cubic; others are trusted, and the samples interpolated at them. Gaps part the channel into runs. Nothing of it is silent: see notes.
 */
export async function evenChannel(
  recording: Recording,
  track: number,
  channel: number,
  work: PausedWork = {},
): Promise<RecordingResult<EvenChannel>> {
  const gathered = await gatherSamples(recording, track, channel, work);
  if (!gathered.ok) return gathered;
  const { values, clock, missing, notes } = gathered.value;
  const id = recording.tracks[track]?.channels[channel]?.id ?? "";
  if (gathered.value.times === null && clock.kind === "even") {
    const { rate, start } = clock;
    return recordingValue({ runs: [{ samples: values, rate, start }], method: "even", rate, jitterShare: 0, missing, gaps: [], notes });
  }
  await work.pause?.();
  const times = gathered.value.times as Float64Array;
  // Coarse stamps repeat by nature, and every sample counts; others that are there twice were written twice.
  const coarse = isCoarse(times);
  const stamped = coarse ? { times, values, repeats: 0 } : withoutRepeats(times, values);
  await work.pause?.();
  if (stamped.times.length < LEAST_SAMPLES)
    return recordingFault("recording.too-few-samples", `channel ${id}`, { samples: stamped.times.length, needed: LEAST_SAMPLES });
  const measured = await inPieces(stampSteps(stamped.times), work);
  if (measured === null || measured.gaps.length > MOST_GAPS * stamped.times.length)
    return recordingFault("recording.no-steady-rate", `channel ${id}`, { gaps: measured?.gaps.length ?? 0, samples: stamped.times.length });
  const counted = measured.jitterShare <= EVEN_SHARE || measured.rounded || coarse;
  const spread = counted ? countedRun : interpolatedRun;
  const runs: TimeSignal[] = [];
  for (const run of measured.runs.filter(({ from, to }) => to - from >= LEAST_SAMPLES)) {
    runs.push(spread(stamped, run, measured.step));
    await work.pause?.();
    work.signal?.throwIfAborted();
  }
  if (runs.length === 0)
    return recordingFault("recording.no-steady-rate", `channel ${id}`, { gaps: measured.gaps.length, samples: values.length });
  const rate = 1 / measured.step;
  return recordingValue({
    runs,
    method: counted ? "counted" : "interpolated",
    rate,
    jitterShare: measured.jitterShare,
    missing,
    gaps: measured.gaps,
    notes: [...notes, ...timingNotes(id, measured, { counted, missing, repeats: stamped.repeats }, runs)],
  });
}

/** Samples at whole numbers of steps; those that are missing are read off the cubic through their neighbours. */
function countedRun({ times, values }: Stamped, run: SteadyRun, step: number): TimeSignal {
  const { from, to, steps } = run;
  const length = (steps.at(-1) as number) + 1;
  const samples = new Float64Array(length);
  const places = Float64Array.from(steps);
  const own = values.subarray(from, to);
  for (let place = 0, k = 0; place < length; place++) {
    while (k + 1 < places.length && (places[k + 1] as number) <= place) k++;
    samples[place] = places[k] === place ? (own[k] as number) : cubicAt(places, own, 0, places.length, k, place);
  }
  return { samples, rate: 1 / step, start: runStart(times, run, step) };
}

function interpolatedRun({ times, values }: Stamped, { from, to }: SteadyRun, step: number): TimeSignal {
  const start = times[from] as number;
  const length = Math.floor(((times[to - 1] as number) - start) / step) + 1;
  const samples = new Float64Array(length);
  for (let n = 0, k = from; n < length; n++) {
    const time = start + n * step;
    while (k + 1 < to && (times[k + 1] as number) <= time) k++;
    samples[n] = cubicAt(times, values, from, to, k, time);
  }
  return { samples, rate: 1 / step, start };
}

interface Mended {
  readonly counted: boolean;
  readonly missing: number;
  readonly repeats: number;
}

function timingNotes(
  id: string,
  { jitterShare, step, gaps, rounded }: StampSteps,
  mended: Mended,
  runs: readonly TimeSignal[],
): readonly Finding[] {
  const notes: Finding[] = [];
  const say = (code: Finding["code"], severity: Finding["severity"], params: Finding["params"]): void => {
    notes.push({ code, severity, path: id, params: { channel: id, ...params } });
  };
  const jitter = { jitterPercent: jitterShare * 100, rateHz: 1 / step };
  if (mended.missing > 0) say("recording.values-missing", "warn", { count: mended.missing });
  if (mended.repeats > 0) say("recording.times-repeat", "note", { count: mended.repeats });
  if (!mended.counted) say("recording.stamps-uneven", "warn", jitter);
  else if (rounded && jitterShare > EVEN_SHARE) say("recording.stamps-rounded", "note", jitter);
  if (gaps.length > 0) {
    const seconds = (run: TimeSignal): number => run.samples.length / run.rate;
    const lostS = gaps.reduce((sum, gap) => sum + gap.seconds, 0);
    say("recording.gaps", "warn", { count: gaps.length, lostS, longestRunS: Math.max(...runs.map(seconds)) });
  }
  return notes;
}
