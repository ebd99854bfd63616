import type { SampleSpool, SpoolRoom } from "./sample-spool.js";

/** Numbers that are fetched as they are needed. */
export interface Column {
  readonly length: number;
  /** Fills `out` with the numbers from `first` on; asked only for those that exist. */
  readonly read: (first: number, out: Float64Array) => void;
}

/** A column that grows at its end. */
export interface LongColumn extends Column {
  readonly push: (values: Float64Array) => Promise<void>;
  /** Gives its room back; nothing is read afterwards. */
  readonly close: () => void;
}

/** Numbers held together: 512 kB. */
const PIECE = 65_536;

/** An empty column. It grows with what comes, never by what a header promises, and moves to a spool once it is longer than memory should hold. */
export function longColumn(room: SpoolRoom): LongColumn {
  let pieces: Float64Array[] = [];
  let spool: SampleSpool | null = null;
  let length = 0;
  const hold = (values: Float64Array): void => {
    for (let done = 0; done < values.length; ) {
      const place = length % PIECE;
      if (place === 0) pieces.push(new Float64Array(PIECE));
      const part = values.subarray(done, done + PIECE - place);
      pieces.at(-1)?.set(part, place);
      length += part.length;
      done += part.length;
    }
  };
  const moveOut = async (): Promise<SampleSpool> => {
    const opened = await room.open();
    for (const [k, piece] of pieces.entries()) opened.append(piece.subarray(0, length - k * PIECE));
    pieces = [];
    return opened;
  };
  return {
    get length() {
      return length;
    },
    push: async (values) => {
      if (spool === null && length + values.length > room.held) spool = await moveOut();
      if (spool === null) return hold(values);
      spool.append(values);
      length += values.length;
    },
    read: (first, out) => (spool === null ? readPieces(pieces, first, out) : spool.read(first, out)),
    close: () => {
      pieces = [];
      spool?.close();
    },
  };
}

function readPieces(pieces: readonly Float64Array[], first: number, out: Float64Array): void {
  for (let done = 0; done < out.length; ) {
    const place = (first + done) % PIECE;
    const piece = pieces[Math.floor((first + done) / PIECE)] as Float64Array;
    const part = piece.subarray(place, place + out.length - done);
    out.set(part, done);
    done += part.length;
  }
}
