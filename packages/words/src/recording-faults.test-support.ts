import { RECORDING_FAULT_CODES, type RecordingFault, type RecordingFaultCode, type RecordingFaultParams } from "@halfturn/engine/findings";

const PARAMS: RecordingFaultParams = {
  "recording.empty": {},
  "recording.unknown-format": { start: "ab-1" },
  "recording.truncated": { promised: 2048, present: 1024 },
  "recording.part-missing": { part: "ab-1" },
  "recording.header-contradicts": { field: "ab-1", got: "3", expected: "4" },
  "recording.encoding-unsupported": { encoding: "ab-1" },
  "recording.no-samples": {},
  "recording.no-time": { columns: "ab-1" },
  "recording.no-column-names": {},
  "recording.columns-differ": { line: 7, got: 3, expected: 4 },
  "recording.not-a-number": { line: 7, column: "ab-1", found: "ab-1" },
  "recording.line-too-long": { line: 7, limit: 1024 },
  "recording.time-backwards": { sample: 12, time: 1.25, before: 1.5 },
  "recording.too-few-samples": { samples: 3, needed: 16 },
  "recording.no-steady-rate": { gaps: 9, samples: 16 },
  "recording.no-time-signal": { sets: 2 },
  "recording.too-many": { of: "sets", limit: 4096 },
  "recording.channel-unknown": { got: "ab-1", allowed: "ab-1" },
  "recording.unit-unknown": { channel: "ab-1", unit: "ab-1" },
  "recording.unit-of-another-kind": { channel: "ab-1", got: "ab-1", expected: "ab-1" },
  "recording.cannot-hold": { format: "WAV", what: "several-clocks" },
};

/** One fault of every code, with parameters as the readers make them. */
export const SAMPLE_RECORDING_FAULTS: readonly RecordingFault[] = RECORDING_FAULT_CODES.map(sampleFault);

// The union's code and params belong together; the compiler cannot follow that through an index.
function sampleFault(code: RecordingFaultCode): RecordingFault {
  return { ok: false, code, path: "line 7", params: PARAMS[code] } as RecordingFault;
}
