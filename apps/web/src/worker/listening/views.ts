import { averagedSpectrum, peakAmplitudes, type SignalResult, type TimeSignal } from "@halfturn/engine/signal";
import type { Envelope, SpectrumView } from "./listening-types.js";

/** The samples of a run between two moments (s), without copying them. */
export function stretchOf({ samples, rate, start }: TimeSignal, from: number, to: number): TimeSignal {
  const first = Math.min(samples.length, Math.max(0, Math.round((from - start) * rate)));
  const end = Math.max(first, Math.min(samples.length, Math.round((to - start) * rate) + 1));
  return { samples: samples.subarray(first, end), rate, start: start + first / rate };
}

/** Least and greatest sample of each of `columns` columns: no peak is lost, however many samples fall into one. */
export function envelopeOf(samples: Float64Array, columns: number): Envelope {
  const count = Math.max(1, Math.min(columns, samples.length));
  const [low, high] = [new Float32Array(count), new Float32Array(count)];
  for (let column = 0; column < count; column++) {
    let [least, greatest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    const end = Math.floor(((column + 1) * samples.length) / count);
    for (let k = Math.floor((column * samples.length) / count); k < end; k++) {
      least = Math.min(least, samples[k] as number);
      greatest = Math.max(greatest, samples[k] as number);
    }
    low[column] = least;
    high[column] = greatest;
  }
  return { low, high };
}

/** Seconds to a block: lines a quarter of a hertz apart, and an order that moves is still one line. */
const BLOCK_SECONDS = 4;
/** Nothing on a driveline turns faster than this. */
const HIGHEST = 400;

/** Amplitudes of tones from 0 Hz to what matters on a driveline. Faults: signal.too-short, signal.no-samples. */
export function spectrumOf({ samples, rate }: TimeSignal): SignalResult<SpectrumView> {
  const blockLength = Math.max(4, Math.min(samples.length, Math.round(BLOCK_SECONDS * rate)));
  const made = averagedSpectrum(samples, rate, { window: "hann", blockLength, overlap: 0.5, detrend: "mean" });
  if (!made.ok) return made;
  const { lineSpacing } = made.value;
  return {
    ok: true,
    value: { lineSpacing, amplitudes: Float32Array.from(peakAmplitudes(made.value).subarray(0, Math.ceil(HIGHEST / lineSpacing))) },
  };
}
