import { type BlockSettings, blocksOf } from "./blocks.js";
import { readerOf, type SampleReader } from "./sample-reader.js";
import { type SignalResult, signalValue } from "./signal-fault.js";

/** One-sided spectrum of a signal in some unit u, from 0 Hz to half the sampling rate. */
export interface Spectrum {
  /** Distance of the lines in Hz; line k lies at k times this. */
  readonly lineSpacing: number;
  /** Width in Hz over which noise is gathered into a line: what density times gives mean square. */
  readonly noiseBandwidth: number;
  /** Mean square of a tone at each line, u^2: A^2/2 for a tone of amplitude A on a line. */
  readonly meanSquare: Float64Array;
  /** Mean square per hertz, u^2/Hz; times lineSpacing, its sum is the signal's mean square. */
  readonly density: Float64Array;
  /** Blocks that were averaged. */
  readonly blocks: number;
}

/** Lines 0 and, at half the rate, the last stand for themselves; every other stands for its mirror image too. */
export const sidesOf = (line: number, last: number): number => (line === 0 || line === last ? 1 : 2);

/**
 * Spectrum averaged over overlapping blocks. samples: unit u, evenly spaced; rate: samples per second, > 0.
 * Amplitudes are scaled by the window's sum, densities by its squares, so each is right for what it is read for: tones and noise.
 * Faults as blocksOf. Source: P. D. Welch, IEEE Trans. Audio Electroacoust. 15(2), 1967; scaling: Heinzel, Ruediger and Schilling,
 * "Spectrum and spectral density estimation by the DFT", AEI Hannover 2002, section 9 (from memory).
 */
export function averagedSpectrum(samples: Float64Array, rate: number, settings: BlockSettings): SignalResult<Spectrum> {
  const steps = averagedSpectrumSteps(readerOf({ samples, rate, start: 0 }), settings);
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
}

/** Blocks between two turns for others: some milliseconds of work. */
const AT_ONCE = 16;

/** As averagedSpectrum, holding one block at a time; yields the share done. */
export function* averagedSpectrumSteps(samples: SampleReader, settings: BlockSettings): Generator<number, SignalResult<Spectrum>> {
  const cut = blocksOf(samples, settings);
  if (!cut.ok) return cut;
  const { rate } = samples;
  const { count, transformLength, windowSum, windowSquares, squaredLines } = cut.value;
  const last = transformLength / 2;
  const meanSquare = new Float64Array(last + 1);
  for (let block = 0; block < count; block++) {
    const squares = squaredLines(block);
    for (let k = 0; k <= last; k++) meanSquare[k] = (meanSquare[k] as number) + (squares[k] as number) / count;
    if (block % AT_ONCE === AT_ONCE - 1) yield (block + 1) / count;
  }
  const density = new Float64Array(last + 1);
  for (let k = 0; k <= last; k++) {
    const sides = sidesOf(k, last) * (meanSquare[k] as number);
    meanSquare[k] = sides / windowSum ** 2;
    density[k] = sides / (rate * windowSquares);
  }
  const noiseBandwidth = (rate * windowSquares) / windowSum ** 2;
  return signalValue({ lineSpacing: rate / transformLength, noiseBandwidth, meanSquare, density, blocks: count });
}

/** Root mean square of a tone at each line, in the signal's unit. */
export const rmsAmplitudes = (spectrum: Spectrum): Float64Array => spectrum.meanSquare.map(Math.sqrt);

/** Amplitude (half peak to peak) of a tone at each line, in the signal's unit; lines that have no mirror image (0 Hz, half the rate) keep their size. */
export function peakAmplitudes(spectrum: Spectrum): Float64Array {
  const last = spectrum.meanSquare.length - 1;
  return spectrum.meanSquare.map((square, k) => Math.sqrt(sidesOf(k, last) * square));
}
