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

/** Looks at every sample of a channel; yields the share done. */
export function* checkChannel({ samples, fullScale }: RecordedChannel): Generator<number, ChannelCheck> {
  const ends = yield* endsOf(samples);
  if (ends.bad >= 0 || !(ends.greatest > ends.least)) return { clipped: 0, clippedShare: 0, bad: ends.bad };
  const top = fullScale === null ? ends.greatest : AT_FULL_SCALE * fullScale;
  const bottom = fullScale === null ? ends.least : -AT_FULL_SCALE * fullScale;
  const clipped = yield* runsAt(samples, top, bottom, fullScale === null ? PLATEAU : 1);
  return { clipped, clippedShare: clipped / samples.length, bad: -1 };
}

function* endsOf(samples: SampleReader): Generator<number, { readonly greatest: number; readonly least: number; readonly bad: number }> {
  let [greatest, least] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const { piece, first } of pieces(samples)) {
    for (let n = 0; n < piece.length; n++) {
      const x = piece[n] as number;
      if (!Number.isFinite(x)) return { greatest, least, bad: first + n };
      greatest = Math.max(greatest, x);
      least = Math.min(least, x);
    }
    yield (0.5 * first) / samples.length;
  }
  return { greatest, least, bad: -1 };
}

/** Samples in runs of at least so many at or beyond the ends. */
function* runsAt(samples: SampleReader, top: number, bottom: number, shortest: number): Generator<number, number> {
  let [clipped, run] = [0, 0];
  for (const { piece, first } of pieces(samples)) {
    for (const x of piece) {
      if (x < top && x > bottom) {
        clipped += run >= shortest ? run : 0;
        run = 0;
      } else run++;
    }
    yield 0.5 + (0.5 * first) / samples.length;
  }
  return clipped + (run >= shortest ? run : 0);
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
