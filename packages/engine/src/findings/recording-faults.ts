/** Why a recording cannot be read or written, and what the sentence about it needs. Bytes are counted from 0, lines and columns from 1. */
export interface RecordingFaultParams {
  readonly "recording.empty": Readonly<Record<string, never>>;
  /** Neither a known header nor text; `start` shows the first bytes. */
  readonly "recording.unknown-format": { readonly start: string };
  /** The header promises more than the file holds. */
  readonly "recording.truncated": { readonly promised: number; readonly present: number };
  /** A part of the format that has to be there. */
  readonly "recording.part-missing": { readonly part: string };
  /** Two statements of a header that cannot both hold, or one that cannot be. */
  readonly "recording.header-contradicts": { readonly field: string; readonly got: string; readonly expected: string };
  readonly "recording.encoding-unsupported": { readonly encoding: string };
  readonly "recording.no-samples": Readonly<Record<string, never>>;
  /** No column is a time; `columns` are those that are there. */
  readonly "recording.no-time": { readonly columns: string };
  /** No line names the columns. */
  readonly "recording.no-column-names": Readonly<Record<string, never>>;
  readonly "recording.columns-differ": { readonly line: number; readonly got: number; readonly expected: number };
  readonly "recording.not-a-number": { readonly line: number; readonly column: string; readonly found: string };
  readonly "recording.line-too-long": { readonly line: number; readonly limit: number };
  readonly "recording.time-backwards": { readonly sample: number; readonly time: number; readonly before: number };
  /** Too few samples with a time and a value to tell a rate. */
  readonly "recording.too-few-samples": { readonly samples: number; readonly needed: number };
  /** Stamps so few or so far apart that no rate fits them. */
  readonly "recording.no-steady-rate": { readonly gaps: number; readonly samples: number };
  readonly "recording.no-time-signal": { readonly sets: number };
  readonly "recording.too-many": { readonly of: "channels" | "sets" | "chunks" | "samples"; readonly limit: number };
  readonly "recording.channel-unknown": { readonly got: string; readonly allowed: string };
  readonly "recording.unit-unknown": { readonly channel: string; readonly unit: string };
  readonly "recording.unit-of-another-kind": { readonly channel: string; readonly got: string; readonly expected: string };
  /** A format that cannot hold what is to be written. */
  readonly "recording.cannot-hold": {
    readonly format: string;
    readonly what: "several-clocks" | "uneven-clock" | "nothing" | "missing-values";
  };
}

export const RECORDING_FAULT_CODES = [
  "recording.empty",
  "recording.unknown-format",
  "recording.truncated",
  "recording.part-missing",
  "recording.header-contradicts",
  "recording.encoding-unsupported",
  "recording.no-samples",
  "recording.no-time",
  "recording.no-column-names",
  "recording.columns-differ",
  "recording.not-a-number",
  "recording.line-too-long",
  "recording.time-backwards",
  "recording.too-few-samples",
  "recording.no-steady-rate",
  "recording.no-time-signal",
  "recording.too-many",
  "recording.channel-unknown",
  "recording.unit-unknown",
  "recording.unit-of-another-kind",
  "recording.cannot-hold",
] as const satisfies readonly (keyof RecordingFaultParams)[];

export type RecordingFaultCode = (typeof RECORDING_FAULT_CODES)[number];

/** A fault as data; `path` is the place in the recording: "line 12", "channel accel_z_ms2", "byte 36", or empty for the whole file. */
export type RecordingFault = {
  readonly [Code in RecordingFaultCode]: {
    readonly ok: false;
    readonly code: Code;
    readonly path: string;
    readonly params: RecordingFaultParams[Code];
  };
}[RecordingFaultCode];
