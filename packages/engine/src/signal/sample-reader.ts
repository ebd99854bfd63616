/** Samples at even time steps. */
export interface TimeSignal {
  /** In some unit u. */
  readonly samples: Float64Array;
  /** Samples per second, > 0. */
  readonly rate: number;
  /** Time of the first sample in seconds, on the clock of the shaft's angle. */
  readonly start: number;
}

/** Samples at even time steps that are fetched as they are needed, so that an hour of them need not be held at once. */
export interface SampleReader {
  /** Samples per second, > 0. */
  readonly rate: number;
  /** Time of the first sample in seconds, on the clock of the shaft's angle. */
  readonly start: number;
  readonly length: number;
  /** Writes samples `first`, `first` + 1, ... into the whole of `out`. A caller asks only for samples that exist. */
  readonly read: (first: number, out: Float64Array) => void;
}

/** A reader of samples that are held in memory. */
export const readerOf = ({ samples, rate, start }: TimeSignal): SampleReader => ({
  rate,
  start,
  length: samples.length,
  read: (first, out) => out.set(samples.subarray(first, first + out.length)),
});
