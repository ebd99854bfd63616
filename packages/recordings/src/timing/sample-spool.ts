/**
 * A place outside memory for numbers: appended in order, then read anywhere. Both calls answer at once, since the mathematics asks in the middle of its work:
 * in Node a file read with readSync, in a browser's worker one of its private file system through a synchronous access handle.
 */
export interface SampleSpool {
  /** The array may be written to afterwards. Throws where there is no room: that is no fault of the recording. */
  readonly append: (values: Float64Array) => void;
  /** Fills `out` with the numbers from `first` on; asked only for those that were appended. */
  readonly read: (first: number, out: Float64Array) => void;
  /** Gives the room back; nothing is read afterwards. */
  readonly close: () => void;
}

/** Where spools come from. Whoever makes a room closes what is still open in it, once the readers are no longer needed. */
export interface SpoolRoom {
  /** A column of up to this many numbers stays in memory. */
  readonly held: number;
  readonly open: () => SampleSpool | Promise<SampleSpool>;
}

/** Everything stays in memory, as where the caller holds it anyway. */
export const MEMORY: SpoolRoom = {
  held: Number.POSITIVE_INFINITY,
  open: () => {
    // A programmer error: no column is longer than without end.
    throw new RangeError("memory has no spools");
  },
};
