import type { RecordingFault, RecordingFaultCode, RecordingFaultParams } from "@halfturn/engine/findings";
import type { Numbers } from "./numbers/numbers.js";

export type RecordingFaultWords = {
  readonly [Code in RecordingFaultCode]: (params: RecordingFaultParams[Code], numbers: Numbers) => string;
};

/** What is said of files that hold a recording. */
export interface RecordingWords {
  /** What a fault without a place is about. */
  readonly wholeRecording: string;
  /** "line 12", "byte 36", "channel accel_z_ms2": the words of a place, which itself stays as it is. */
  readonly places: {
    readonly line: string;
    readonly byte: string;
    readonly channel: string;
    readonly column: string;
    readonly time: string;
  };
  /** One line each: what is wrong with the file, and what to do. */
  readonly faults: RecordingFaultWords;
}

/** "line 12: ...": place, what is wrong, remedy, on one line. */
export function recordingFaultText({ wholeRecording, places, faults }: RecordingWords, fault: RecordingFault, numbers: Numbers): string {
  // The union's code and params belong together; the compiler cannot follow that through an index.
  const words = faults[fault.code] as (params: RecordingFault["params"], numbers: Numbers) => string;
  const [kind = "", ...rest] = fault.path.split(" ");
  const named = Object.hasOwn(places, kind) ? [places[kind as keyof typeof places], ...rest].join(" ") : fault.path;
  return `${named === "" ? wholeRecording : named}: ${words(fault.params, numbers)}`.replaceAll(/[^\S\u00a0]+/g, " ");
}
