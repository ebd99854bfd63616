import { type RealFft, realFft, transformSize } from "./real-fft.js";
import type { SampleReader } from "./sample-reader.js";
import { type SignalResult, signalFault, signalValue } from "./signal-fault.js";
import { type WindowName, windowSamples, windowSums } from "./window.js";

/** How a long signal is cut up and transformed. */
export interface BlockSettings {
  readonly window: WindowName;
  /** Samples in a block, >= 4. Any number: blocks that are no power of two are followed by zeros, which only draws the lines closer. */
  readonly blockLength: number;
  /** Share of a block that the next one repeats, 0 <= overlap < 1. */
  readonly overlap: number;
  /** Whether each block loses its mean first: it hides a sensor's offset, and the mean itself. */
  readonly detrend: "none" | "mean";
}

/** The blocks of one signal, ready to be transformed. */
export interface Blocks {
  readonly count: number;
  /** First sample of block i. */
  readonly startOf: (block: number) => number;
  /** Lines per transform less one; line k lies at k rate / transformLength. */
  readonly transformLength: number;
  readonly windowSum: number;
  readonly windowSquares: number;
  /** |X|^2 of every line of block i, in unit^2, unscaled; written anew by the next call. */
  readonly squaredLines: (block: number) => Float64Array;
}

/** Cuts samples into blocks. Faults: signal.no-samples; signal.too-short where not one block fits; signal.bad-rate for a rate that is not positive. */
export function blocksOf(samples: SampleReader, settings: BlockSettings): SignalResult<Blocks> {
  const { rate } = samples;
  const { blockLength, overlap } = settings;
  if (!(Number.isInteger(blockLength) && blockLength >= 4)) throw new RangeError(`a block has at least 4 samples, got ${blockLength}`);
  if (!(overlap >= 0 && overlap < 1)) throw new RangeError(`an overlap lies from 0 to below 1, got ${overlap}`);
  if (!(rate > 0 && Number.isFinite(rate))) return signalFault("signal.bad-rate", "rate", { rate });
  if (samples.length === 0) return signalFault("signal.no-samples", "samples");
  if (samples.length < blockLength) return signalFault("signal.too-short", "samples", { samples: samples.length, needed: blockLength });
  const hop = Math.max(1, Math.round(blockLength * (1 - overlap)));
  const window = windowSamples(settings.window, blockLength);
  const transformLength = transformSize(blockLength);
  const sums = windowSums(window);
  return signalValue({
    count: Math.floor((samples.length - blockLength) / hop) + 1,
    startOf: (block) => block * hop,
    transformLength,
    windowSum: sums.sum,
    windowSquares: sums.squares,
    squaredLines: transformer(samples, hop, window, realFft(transformLength), settings.detrend),
  });
}

function transformer(
  samples: SampleReader,
  hop: number,
  window: Float64Array,
  fft: RealFft,
  detrend: BlockSettings["detrend"],
): Blocks["squaredLines"] {
  const block = new Float64Array(window.length);
  let squares = new Float64Array(0);
  return (index) => {
    samples.read(index * hop, block);
    let mean = 0;
    if (detrend === "mean") for (const x of block) mean += x / block.length;
    for (let n = 0; n < block.length; n++) block[n] = ((block[n] as number) - mean) * (window[n] as number);
    const { re, im } = fft(block);
    if (squares.length !== re.length) squares = new Float64Array(re.length);
    for (let k = 0; k < re.length; k++) squares[k] = (re[k] as number) ** 2 + (im[k] as number) ** 2;
    return squares;
  };
}
