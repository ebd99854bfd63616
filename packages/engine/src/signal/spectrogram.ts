import { type BlockSettings, blocksOf } from "./blocks.js";
import { readerOf } from "./sample-reader.js";
import { type SignalResult, signalValue } from "./signal-fault.js";
import { sidesOf } from "./spectrum.js";

/** How a signal's spectrum changes in time. */
export interface Spectrogram {
  /** Middle of each block in seconds from the first sample. */
  readonly times: Float64Array;
  /** Distance of the lines in Hz. */
  readonly lineSpacing: number;
  readonly lines: number;
  /** Mean square of a tone, u^2, row by row: block i, line k at i lines + k. */
  readonly meanSquare: Float64Array;
}

/** Spectrum of every block, scaled for tones as in averagedSpectrum. samples: unit u; rate: samples per second, > 0. Faults as blocksOf. */
export function spectrogram(samples: Float64Array, rate: number, settings: BlockSettings): SignalResult<Spectrogram> {
  const cut = blocksOf(readerOf({ samples, rate, start: 0 }), settings);
  if (!cut.ok) return cut;
  const { count, startOf, transformLength, windowSum, squaredLines } = cut.value;
  const last = transformLength / 2;
  const lines = last + 1;
  const meanSquare = new Float64Array(count * lines);
  for (let block = 0; block < count; block++) {
    const squares = squaredLines(block);
    for (let k = 0; k < lines; k++) meanSquare[block * lines + k] = (sidesOf(k, last) * (squares[k] as number)) / windowSum ** 2;
  }
  const times = Float64Array.from({ length: count }, (_, block) => (startOf(block) + settings.blockLength / 2) / rate);
  return signalValue({ times, lineSpacing: rate / transformLength, lines, meanSquare });
}
