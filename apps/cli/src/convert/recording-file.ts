import type { CliContext } from "../program/context.js";

export const ENCODINGS = ["pcm16", "pcm24", "pcm32", "float32", "float64", "text", "binary"] as const;

/** How the samples of a file are written. */
export type Encoding = (typeof ENCODINGS)[number];

export type RecordingKind = "wav" | "csv" | "tsv" | "uff";

/** A recording to be written, and which kind of file its ending asks for. */
export interface RecordingFile {
  readonly path: string;
  readonly kind: RecordingKind;
}

/** The encodings of each kind, the usual one first. A table is written as text and nothing else. */
export const ENCODINGS_OF = {
  wav: ["pcm24", "pcm16", "pcm32", "float32", "float64"],
  uff: ["text", "binary"],
  csv: ["text"],
  tsv: ["text"],
} as const satisfies { readonly [Kind in RecordingKind]: readonly Encoding[] };

/** Throwing is how a flag's parser reports. */
export function parseRecordingFile(this: CliContext, input: string): RecordingFile {
  const kind = /\.(wav|csv|tsv|uff)$/i.exec(input)?.[1]?.toLowerCase();
  if (kind === "wav" || kind === "csv" || kind === "tsv" || kind === "uff") return { path: input, kind };
  throw new Error(this.words.terminal.converting.outputKind);
}
