import type { SampleReader } from "../signal/sample-reader.js";
import type { RecordedChannel } from "./input.js";

/** What a look at the raw samples found. */
export interface ChannelCheck {
  /** Samples at the end of the scale. */
  readonly clipped: number;
  readonly clippedShare: number;
  /** Index of the first sample that is not a number; -1 = none. */
  readonly bad: number;
}

const PIECE = 65_536;
/** So near to full scale is at it. */
const AT_FULL_SCALE = 0.999;
/** Without a full scale: so many equal samples in a row at the greatest or least value are a plateau. */
const PLATEAU = 3;

/** Looks at every sample of a channel, once; yields the share done. */
export function* checkChannel({ samples, fullScale }: RecordedChannel): Generator<number, ChannelCheck> {
  const [top, bottom] = [endOfScale(1), endOfScale(-1)];
  const limit = fullScale === null ? Number.POSITIVE_INFINITY : AT_FULL_SCALE * fullScale;
  let atLimit = 0;
  for (const { piece, first } of pieces(samples)) {
    const bad = firstNoNumber(piece);
    if (bad >= 0) return { clipped: 0, clippedShare: 0, bad: first + bad };
    top.look(piece);
    bottom.look(piece);
    if (fullScale !== null) atLimit += countBeyond(piece, limit);
    yield first / samples.length;
  }
  const still = top.greatest() === -bottom.greatest();
  const clipped = still ? 0 : fullScale === null ? top.plateaus() + bottom.plateaus() : atLimit;
  return { clipped, clippedShare: clipped / Math.max(1, samples.length), bad: -1 };
}

// The loops over samples stand apart, since within a generator they would run many times slower.

/** One end of what a channel reaches: its greatest sample, or with sign -1 its least, and how many samples lie there in runs long enough to be a plateau. */
function endOfScale(sign: 1 | -1): {
  readonly look: (piece: Float64Array) => void;
  readonly greatest: () => number;
  readonly plateaus: () => number;
} {
  let greatest = Number.NEGATIVE_INFINITY;
  let run = 0;
  let held = 0;
  return {
    look: (piece) => {
      // On names of its own: what others share is fetched and put back at every sample.
      let [most, now, before] = [greatest, run, held];
      for (let n = 0; n < piece.length; n++) {
        const x = sign * (piece[n] as number);
        if (x < most) {
          if (now >= PLATEAU) before += now;
          now = 0;
        } else if (x === most) now++;
        else {
          most = x;
          now = 1;
          before = 0;
        }
      }
      [greatest, run, held] = [most, now, before];
    },
    greatest: () => greatest,
    plateaus: () => held + (run >= PLATEAU ? run : 0),
  };
}

function firstNoNumber(piece: Float64Array): number {
  for (let n = 0; n < piece.length; n++) if (!Number.isFinite(piece[n] as number)) return n;
  return -1;
}

function countBeyond(piece: Float64Array, limit: number): number {
  let count = 0;
  for (let n = 0; n < piece.length; n++) if (Math.abs(piece[n] as number) >= limit) count++;
  return count;
}

function* pieces(reader: SampleReader): Generator<{ readonly piece: Float64Array; readonly first: number }> {
  const buffer = new Float64Array(Math.min(PIECE, reader.length));
  for (let first = 0; first < reader.length; first += PIECE) {
    const piece = buffer.subarray(0, Math.min(PIECE, reader.length - first));
    reader.read(first, piece);
    yield { piece, first };
  }
}

/** Frequency at which a tone of `frequency` Hz shows when sampled `rate` times a second: its distance from the nearest multiple of the rate. */
export const foldedFrequency = (frequency: number, rate: number): number => Math.abs(frequency - rate * Math.round(frequency / rate));
