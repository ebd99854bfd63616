import type { RecordingFault, RecordingFaultCode, RecordingFaultParams } from "@halfturn/engine/findings";

export type RecordingResult<Value> = { readonly ok: true; readonly value: Value } | RecordingFault;

/** A fault of a recording as data. */
export const recordingFault = <Code extends RecordingFaultCode>(
  code: Code,
  path: string,
  params: RecordingFaultParams[Code],
): RecordingFault =>
  // The union's code and params belong together; the compiler cannot follow that through a type parameter.
  ({ ok: false, code, path, params }) as RecordingFault;

export const recordingValue = <Value>(value: Value): RecordingResult<Value> => ({ ok: true, value });
