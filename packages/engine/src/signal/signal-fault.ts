/** Why a signal cannot be worked on. The words live in the catalogue of a language. */
export type SignalFaultCode =
  | "signal.too-short"
  | "signal.no-samples"
  | "signal.lengths-differ"
  | "signal.not-finite"
  | "signal.bad-rate"
  | "shaft-angle.too-few-pulses"
  | "shaft-angle.times-not-rising"
  | "shaft-angle.too-few-speeds"
  | "shaft-angle.standstill"
  | "shaft-angle.no-ridge"
  | "order-tracking.no-whole-turns"
  | "attribution.no-orders"
  | "attribution.not-turning";

export interface SignalFault {
  readonly ok: false;
  readonly code: SignalFaultCode;
  /** Which input: "samples", "pulses[12]". */
  readonly path: string;
  readonly params: Readonly<Record<string, number | string>>;
}

export type SignalResult<Value> = { readonly ok: true; readonly value: Value } | SignalFault;

/** A fault of a recording as data: which, at what place of the input, with the numbers that its sentence needs. */
export const signalFault = (code: SignalFaultCode, path: string, params: SignalFault["params"] = {}): SignalFault => ({
  ok: false,
  code,
  path,
  params,
});

/** A result that could be worked out. */
export const signalValue = <Value>(value: Value): SignalResult<Value> => ({ ok: true, value });
