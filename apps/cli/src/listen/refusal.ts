import type { RecordingFault } from "@halfturn/engine/findings";
import { type Catalogue, recordingFaultText } from "@halfturn/words";
import { BAD_USE, type UNANSWERED } from "../program/exit-code.js";

/** Why a recording gives no answer: lines for people, and the exit code. */
export interface Refusal {
  readonly ok: false;
  readonly code: typeof BAD_USE | typeof UNANSWERED;
  readonly lines: readonly string[];
}

/** A fault of a file is bad input. */
export const faultRefusal = (fault: RecordingFault, file: string, { recording, numbers }: Catalogue): Refusal => ({
  ok: false,
  code: BAD_USE,
  lines: [`${file}: ${recordingFaultText(recording, fault, numbers)}`],
});
