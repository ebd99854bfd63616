import type { NoFiles } from "../../../worker/listening/private-spools.js";
import type { SpeedForm } from "../set-up/speed-form.js";

/** What has to be known of a recording before it can be listened to. */
export interface SetUpWords {
  readonly opening: string;
  readonly refused: string;
  readonly gone: string;
  readonly channels: string;
  readonly noChannels: string;
  /** "500.0 samples per second, measured; 40.0 s". */
  readonly clock: (rate: string, seconds: string) => string;
  readonly even: string;
  readonly jitter: (share: string) => string;
  readonly gaps: (count: string, seconds: string) => string;
  readonly noGaps: string;
  readonly reading: (share: string) => string;
  /** Why samples are held in memory, and how many of them fit. */
  readonly inMemory: { readonly [W in NoFiles]: (limit: string) => string };
  readonly inMemoryRefused: { readonly [W in NoFiles]: string };
  readonly scale: string;
  readonly scaleHelp: string;
  readonly unit: string;
  readonly unitUnknown: string;
  readonly fullScale: string;
  readonly fullScaleHelp: string;
  readonly sensitivity: string;
  readonly sensitivityHelp: string;
  readonly speed: string;
  readonly speedFrom: { readonly [F in Exclude<SpeedForm["from"], "column" | "tachometer">]: string };
  readonly tachometer: (channel: string) => string;
  readonly tachometerOn: string;
  readonly perTurn: string;
  readonly constant: string;
  readonly constantHelp: string;
  readonly rangeHelp: string;
  readonly slowest: string;
  readonly fastest: string;
  readonly filter: string;
  readonly filterHelp: string;
  readonly more: string;
  readonly name: string;
  readonly working: (share: string) => string;
  readonly cancel: string;
  readonly lacking: string;
}
