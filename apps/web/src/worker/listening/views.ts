import { averagedSpectrumSteps, peakAmplitudes, type SampleReader, type SignalResult } from "@halfturn/engine/signal";
import type { Envelope, SpectrumView } from "./listening-types.js";

/** The samples of a run between two moments (s), without copying them. */
export function stretchOf({ length, rate, start, read }: SampleReader, from: number, to: number): SampleReader {
  const first = Math.min(length, Math.max(0, Math.round((from - start) * rate)));
  const end = Math.max(first, Math.min(length, Math.round((to - start) * rate) + 1));
  return { length: end - first, rate, start: start + first / rate, read: (k, out) => read(first + k, out) };
}

/** Samples looked at between two turns for others. */
const STRETCH = 262_144;

/** Least and greatest sample of each of `columns` columns: no peak is lost, however many samples fall into one. Yields the share done. */
export function* envelopeSteps({ length, read }: SampleReader, columns: number): Generator<number, Envelope> {
  const count = Math.max(1, Math.min(columns, length));
  const low = new Float32Array(count).fill(Number.POSITIVE_INFINITY);
  const high = new Float32Array(count).fill(Number.NEGATIVE_INFINITY);
  const endOf = (column: number): number => Math.floor(((column + 1) * length) / count);
  const held = new Float64Array(Math.min(STRETCH, length));
  let column = 0;
  for (let first = 0; first < length; first += held.length) {
    const part = held.subarray(0, length - first);
    read(first, part);
    for (const [k, value] of part.entries()) {
      while (first + k >= endOf(column)) column++;
      low[column] = Math.min(low[column] as number, value);
      high[column] = Math.max(high[column] as number, value);
    }
    yield Math.min(1, (first + held.length) / length);
  }
  return { low, high };
}

/** Seconds to a block: lines a quarter of a hertz apart, and an order that moves is still one line. */
const BLOCK_SECONDS = 4;
/** Nothing on a driveline turns faster than this. */
const HIGHEST = 400;

/** Amplitudes of tones from 0 Hz to what matters on a driveline. Yields the share done. Faults: signal.too-short, signal.no-samples. */
export function* spectrumSteps(run: SampleReader): Generator<number, SignalResult<SpectrumView>> {
  const blockLength = Math.max(4, Math.min(run.length, Math.round(BLOCK_SECONDS * run.rate)));
  const made = yield* averagedSpectrumSteps(run, { window: "hann", blockLength, overlap: 0.5, detrend: "mean" });
  if (!made.ok) return made;
  const { lineSpacing } = made.value;
  return {
    ok: true,
    value: { lineSpacing, amplitudes: Float32Array.from(peakAmplitudes(made.value).subarray(0, Math.ceil(HIGHEST / lineSpacing))) },
  };
}
