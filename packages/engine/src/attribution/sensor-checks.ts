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
  const ends = endsOfScale();
  let atLimit = 0;
  for (const { piece, first } of pieces(samples)) {
    const bad = ends.look(piece);
    if (bad >= 0) return { clipped: 0, clippedShare: 0, bad: first + bad };
    if (fullScale !== null) atLimit += countBeyond(piece, AT_FULL_SCALE * fullScale);
    yield first / samples.length;
  }
  const held = fullScale === null ? ends.plateaus() : atLimit;
  const clipped = ends.still() ? 0 : held;
  return { clipped, clippedShare: clipped / Math.max(1, samples.length), bad: -1 };
}

// The loops over samples stand apart, since within a generator they would run many times slower.

interface EndsOfScale {
  /** Takes samples in; index of the first that is no number, -1 = none. */
  readonly look: (piece: Float64Array) => number;
  /** Whether all are the same. */
  readonly still: () => boolean;
  /** Samples at the greatest and at the least value, in runs long enough to be a plateau. */
  readonly plateaus: () => number;
}

/** What a channel reaches, and how it stays there. */
function endsOfScale(): EndsOfScale {
  const [top, bottom] = [endOfScale(), endOfScale()];
  return {
    look: (piece) => {
      let inside = false;
      for (let n = 0; n < piece.length; n++) {
        const x = piece[n] as number;
        // Nearly all samples lie within what was reached, and nothing is to be done about the second in a row that does.
        if (x < top.value && -x < bottom.value) {
          if (!inside) {
            leave(top);
            leave(bottom);
          }
          inside = true;
          continue;
        }
        if (!Number.isFinite(x)) return n;
        inside = false;
        reach(top, x);
        reach(bottom, -x);
      }
      return -1;
    },
    still: () => top.value === -bottom.value,
    plateaus: () => top.held + bottom.held + (top.run >= PLATEAU ? top.run : 0) + (bottom.run >= PLATEAU ? bottom.run : 0),
  };
}

/** The greatest value so far, how many of the last samples are it, and how many were in plateaus that ended. */
interface EndOfScale {
  value: number;
  run: number;
  held: number;
}

const endOfScale = (): EndOfScale => ({ value: Number.NEGATIVE_INFINITY, run: 0, held: 0 });

function leave(end: EndOfScale): void {
  if (end.run >= PLATEAU) end.held += end.run;
  end.run = 0;
}

function reach(end: EndOfScale, x: number): void {
  if (x === end.value) {
    end.run++;
    return;
  }
  leave(end);
  if (x < end.value) return;
  end.value = x;
  end.run = 1;
  end.held = 0;
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
