import type { SampleReader } from "./sample-reader.js";
import { type SignalResult, signalFault, signalValue } from "./signal-fault.js";
import { type WindowName, windowSamples, windowSums } from "./window.js";

/** A narrow band, looked at closely. */
export interface ZoomSettings {
  /** Hz, 0 <= from < to <= half the rate. */
  readonly from: number;
  readonly to: number;
  /** Lines, both ends among them; 2 or more. */
  readonly lines: number;
  readonly window: WindowName;
}

export interface ZoomSpectrum {
  /** Hz, evenly from `from` to `to`. */
  readonly frequencies: Float64Array;
  /** Mean square of a tone at each line, u^2 (A^2/2 for an amplitude A). */
  readonly meanSquare: Float64Array;
  /** Width in Hz over which noise is gathered into a line. Tones nearer than some four times one over the duration do not part, however many lines there are. */
  readonly noiseBandwidth: number;
}

/** Samples to a piece, so that no piece takes long. */
const PIECE = 4096;

/** The whole at once; see zoomSpectrumSteps. */
export function zoomSpectrum(reader: SampleReader, settings: ZoomSettings): SignalResult<ZoomSpectrum> {
  const steps = zoomSpectrumSteps(reader, settings);
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
}

/**
 * The spectrum of a whole recording at chosen frequencies, by its definition: X(f) = sum of w(n) x(n) exp(-2 pi i f n / rate), less the recording's mean. For a few
 * hundred lines this is quicker than a transform of an hour, and the lines may lie anywhere. Yields the share done. Holds the window and one piece.
 * Faults: signal.bad-rate, signal.too-short (under four samples).
 */
export function* zoomSpectrumSteps(
  reader: SampleReader,
  { from, to, lines, window }: ZoomSettings,
): Generator<number, SignalResult<ZoomSpectrum>> {
  const { rate, length } = reader;
  if (!(rate > 0 && Number.isFinite(rate))) return signalFault("signal.bad-rate", "rate", { rate });
  if (!(from >= 0 && to > from && to <= rate / 2 && Number.isInteger(lines) && lines >= 2))
    throw new RangeError(`a band rises from 0 to at most half the rate, with two lines or more; got ${from} to ${to} Hz, ${lines} lines`);
  if (length < 4) return signalFault("signal.too-short", "samples", { samples: length, needed: 4 });
  const shape = windowSamples(window, length);
  const { sum, squares } = windowSums(shape);
  const frequencies = Float64Array.from({ length: lines }, (_, k) => from + ((to - from) * k) / (lines - 1));
  const piece = new Float64Array(Math.min(PIECE, length));
  let mean = 0;
  for (let first = 0; first < length; first += PIECE) {
    const part = piece.subarray(0, Math.min(PIECE, length - first));
    reader.read(first, part);
    for (const x of part) mean += x / length;
  }
  const re = new Float64Array(lines);
  const im = new Float64Array(lines);
  for (let first = 0; first < length; first += PIECE) {
    const part = piece.subarray(0, Math.min(PIECE, length - first));
    reader.read(first, part);
    for (let n = 0; n < part.length; n++) part[n] = ((part[n] as number) - mean) * (shape[first + n] as number);
    for (let k = 0; k < lines; k++) addLine(part, first, (2 * Math.PI * (frequencies[k] as number)) / rate, k, re, im);
    yield Math.min(1, (first + PIECE) / length);
  }
  const meanSquare = frequencies.map((frequency, k) => {
    const sides = frequency === 0 || frequency === rate / 2 ? 1 : 2;
    return (sides * ((re[k] as number) ** 2 + (im[k] as number) ** 2)) / sum ** 2;
  });
  return signalValue({ frequencies, meanSquare, noiseBandwidth: (rate * squares) / sum ** 2 });
}

/** Adds a piece to line k. The wave is turned on step by step within the piece, and begun exactly at its start. */
function addLine(part: Float64Array, first: number, step: number, k: number, re: Float64Array, im: Float64Array): void {
  const [c, s] = [Math.cos(step), Math.sin(step)];
  let [x, y] = [Math.cos(step * first), -Math.sin(step * first)];
  let [a, b] = [0, 0];
  for (let n = 0; n < part.length; n++) {
    const value = part[n] as number;
    a += value * x;
    b += value * y;
    [x, y] = [x * c + y * s, y * c - x * s];
  }
  re[k] = (re[k] as number) + a;
  im[k] = (im[k] as number) + b;
}
