import type { Finding } from "@halfturn/engine/findings";
import type { LongWork } from "@halfturn/engine/uncertainty";
import type { ChannelQuantity } from "./channels/unit-table.js";
import type { RecordingResult } from "./recording-result.js";

/** `memory` has not come from a file. */
export type RecordingFormat = "wav" | "csv" | "uff" | "memory";

/** One column, WAV channel or data set. Values come out of `read` in SI. */
export interface Channel {
  /** As the file names it: `accel_z_ms2`, `channel_1`. Unique in a recording. */
  readonly id: string;
  /** Without its unit: `accel_z`. */
  readonly name: string;
  /** As the file writes it; null where it writes none. */
  readonly unit: string | null;
  readonly quantity: ChannelQuantity;
  /** The greatest value that the file can hold, in SI; null where numbers of any size stand in it. */
  readonly fullScale: number | null;
}

/** When the samples of a track were taken. `count` is null until the file has been read through. */
export type Clock =
  /** Every 1/rate seconds from `start`. */
  | { readonly kind: "even"; readonly start: number; readonly rate: number; readonly count: number }
  /** Each sample with its own time. */
  | { readonly kind: "stamped"; readonly count: number | null };

/** Channels on one clock. */
export interface Track {
  readonly clock: Clock;
  readonly channels: readonly Channel[];
}

/** A stretch of a track. The arrays are the receiver's. */
export interface Block {
  /** Index of its first sample in the track. */
  readonly first: number;
  /** Seconds; null on an even clock. */
  readonly times: Float64Array | null;
  /** One per wanted channel, in SI; NaN where the file has no value. */
  readonly values: readonly Float64Array[];
  /** What had to be put right in this stretch. */
  readonly notes: readonly Finding[];
}

/** What of a recording is wanted. */
export interface Selection {
  readonly track: number;
  /** Indices of channels of that track. */
  readonly channels: readonly number[];
}

/** A recording that has been opened: its header is read, its samples are not. */
export interface Recording {
  readonly format: RecordingFormat;
  readonly tracks: readonly Track[];
  readonly notes: readonly Finding[];
  /** The samples, in stretches, in bounded memory; ends after the first fault. May be called again. */
  readonly read: (selection: Selection, work?: LongWork) => AsyncIterable<RecordingResult<Block>>;
}
