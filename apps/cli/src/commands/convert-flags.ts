import type { Language } from "@halfturn/words";
import type { Encoding, RecordingFile } from "../convert/recording-file.js";

export interface ConvertFlags {
  readonly output: RecordingFile;
  readonly case?: string;
  readonly channel?: readonly string[];
  /** Seconds from the first sample on. */
  readonly from?: number;
  readonly to?: number;
  readonly encoding?: Encoding;
  /** SI. */
  readonly fullScale?: number;
  readonly decimal?: "point" | "comma";
  readonly force: boolean;
  readonly json: boolean;
  readonly lang?: Language;
}
