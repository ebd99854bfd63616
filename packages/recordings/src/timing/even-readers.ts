import type { Finding } from "@halfturn/engine/findings";
import type { SampleReader } from "@halfturn/engine/signal";
import { inPieces, type PausedWork } from "@halfturn/engine/uncertainty";
import type { Recording } from "../recording.js";
import { type RecordingResult, recordingFault, recordingValue } from "../recording-result.js";
import { countedRun, interpolatedRun, laidOut, readerOn } from "./even-run.js";
import { gatherSamples, type Samples } from "./gather-samples.js";
import type { LongColumn } from "./long-column.js";
import type { SpoolRoom } from "./sample-spool.js";
import { isCoarse, type StampSteps, stampSteps } from "./stamp-steps.js";
import { withoutRepeats } from "./without-repeats.js";

/** How a channel came to even steps: as it was, by counting its samples, or by interpolation at its stamps. */
export type EvenMethod = "even" | "counted" | "interpolated";

/** A channel on even steps of time, its samples fetched as they are needed, and what its clock was like. */
export interface EvenReaders {
  /** In order of time, one per stretch without a gap. */
  readonly runs: readonly SampleReader[];
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
 * Holds no more of it in memory than the room says; the runs are read from there until it is closed.
 */
export async function evenReaders(
  recording: Recording,
  track: number,
  channel: number,
  room: SpoolRoom,
  work: PausedWork = {},
): Promise<RecordingResult<EvenReaders>> {
  const gathered = await gatherSamples(recording, track, channel, room, work);
  if (!gathered.ok) return gathered;
  const { values, times, clock, missing, notes } = gathered.value;
  const id = recording.tracks[track]?.channels[channel]?.id ?? "";
  if (times === null && clock.kind === "even") {
    const { rate, start } = clock;
    return recordingValue({ runs: [readerOn(values, rate, start)], method: "even", rate, jitterShare: 0, missing, gaps: [], notes });
  }
  const even = await evenFromStamps({ ...gathered.value, times: times as LongColumn }, id, room, work);
  values.close();
  times?.close();
  return even;
}

async function evenFromStamps(
  gathered: Samples & { readonly times: LongColumn },
  id: string,
  room: SpoolRoom,
  work: PausedWork,
): Promise<RecordingResult<EvenReaders>> {
  const { missing, notes } = gathered;
  // Coarse stamps repeat by nature, and every sample counts; others that are there twice were written twice.
  const coarse = isCoarse(gathered.repeats, gathered.values.length);
  const repeats = coarse ? 0 : gathered.repeats;
  const stamped = repeats === 0 ? gathered : await withoutRepeats(gathered, room, work);
  const samples = stamped.times.length;
  if (samples < LEAST_SAMPLES) return recordingFault("recording.too-few-samples", `channel ${id}`, { samples, needed: LEAST_SAMPLES });
  const measured = await inPieces(stampSteps(stamped.times, coarse ? gathered.repeats : 0), { signal: work.signal, pause: work.pause });
  if (measured === null || measured.gaps.length > MOST_GAPS * samples)
    return recordingFault("recording.no-steady-rate", `channel ${id}`, { gaps: measured?.gaps.length ?? 0, samples });
  const counted = measured.jitterShare <= EVEN_SHARE || measured.rounded || coarse;
  const rate = 1 / measured.step;
  const runs: SampleReader[] = [];
  for (const run of measured.runs.filter(({ from, to }) => to - from >= LEAST_SAMPLES)) {
    const laying = counted ? countedRun(stamped, run) : interpolatedRun(stamped, run, measured.step);
    runs.push(await laidOut(laying, rate, room, work));
  }
  if (runs.length === 0)
    return recordingFault("recording.no-steady-rate", `channel ${id}`, { gaps: measured.gaps.length, samples: gathered.values.length });
  return recordingValue({
    runs,
    method: counted ? "counted" : "interpolated",
    rate,
    jitterShare: measured.jitterShare,
    missing,
    gaps: measured.gaps,
    notes: [...notes, ...timingNotes(id, measured, { counted, missing, repeats }, runs)],
  });
}

/** The longest stretch without a gap. */
export const longestReader = ({ runs }: EvenReaders): SampleReader => runs.reduce((best, run) => (run.length > best.length ? run : best));

interface Mended {
  readonly counted: boolean;
  readonly missing: number;
  readonly repeats: number;
}

function timingNotes(
  id: string,
  { jitterShare, step, gaps, rounded }: StampSteps,
  mended: Mended,
  runs: readonly SampleReader[],
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
    const seconds = (run: SampleReader): number => run.length / run.rate;
    const lostS = gaps.reduce((sum, gap) => sum + gap.seconds, 0);
    say("recording.gaps", "warn", { count: gaps.length, lostS, longestRunS: Math.max(...runs.map(seconds)) });
  }
  return notes;
}
