import type { AttributionJson, Case, PowertrainNote, Problem } from "@halfturn/casefile";
import type { Finding, RecordingFault } from "@halfturn/engine/findings";
import type { OrderCause } from "@halfturn/engine/orders";
import type { SignalFault } from "@halfturn/engine/signal";
import type { VibrationPicture } from "@halfturn/figures";
import type { ChannelQuantity, EvenMethod, RecordedSpeed, RecordingFormat } from "@halfturn/recordings";
import type { Language } from "@halfturn/words";
import type { NoFiles } from "./private-spools.js";

/** One channel of a file, as far as its header tells. */
export interface LookedChannel {
  readonly id: string;
  readonly name: string;
  readonly unit: string | null;
  readonly quantity: ChannelQuantity;
  /** In SI; null where the file can hold numbers of any size. */
  readonly fullScale: number | null;
  readonly heard: boolean;
  readonly speed: RecordedSpeed["kind"] | null;
}

/** What is in a file. */
export interface Look {
  readonly format: RecordingFormat;
  readonly channels: readonly LookedChannel[];
  /** Ids of the channels that are best listened to. */
  readonly best: readonly string[];
  /** The channel that tells speed most surely; null where none does. */
  readonly surestSpeed: string | null;
  readonly notes: readonly Finding[];
}

/** The chosen channels as they were read. */
export interface ReadChannels {
  readonly ids: readonly string[];
  /** The longest stretch without a gap: its first moment, and how long it is; seconds. */
  readonly start: number;
  readonly seconds: number;
  /** Samples per second, as measured. */
  readonly rate: number;
  readonly method: EvenMethod;
  readonly jitterShare: number;
  readonly gaps: { readonly count: number; readonly seconds: number };
  readonly findings: readonly Finding[];
  /** Why samples are held in memory that files would hold elsewhere; null where they lie in files, or are too few to matter. */
  readonly inMemory: NoFiles | null;
}

/** A refusal says why it was memory that had to hold the samples; null where it had not. */
export type ReadResult = { readonly ok: true; readonly value: ReadChannels } | (RecordingFault & { readonly inMemory: NoFiles | null });

/** The least and the greatest sample of each column of a drawing, in SI. */
export interface Envelope {
  readonly low: Float32Array;
  readonly high: Float32Array;
}

/** Half peak to peak at each line, in SI. */
export interface SpectrumView {
  readonly lineSpacing: number;
  readonly amplitudes: Float32Array;
}

/** Where the speed comes from. Speeds in m/s. */
export type SpeedChoice =
  | { readonly kind: "column"; readonly id: string }
  | { readonly kind: "tachometer"; readonly id: string; readonly part: string; readonly perTurn: number }
  | { readonly kind: "constant"; readonly speed: number }
  | { readonly kind: "vibration"; readonly slowest: number; readonly fastest: number };

export interface HearRequest {
  readonly document: Case;
  readonly speed: SpeedChoice;
  readonly gear: string | undefined;
  /** -3 dB of the sensor's filter, Hz. */
  readonly filter: number | null;
  /** Seconds on the recording's clock; null = all of it. */
  readonly stretch: readonly [from: number, to: number] | null;
  readonly language: Language;
}

export interface HeardPart {
  readonly part: string;
  readonly perWheelTurn: number;
  readonly orders: readonly { readonly order: number; readonly cause: OrderCause }[];
}

export interface Heard {
  readonly json: AttributionJson;
  readonly gear: string | null;
  readonly notes: readonly PowertrainNote[];
  readonly parts: readonly HeardPart[];
  /** Turns of the wheel per second: least, mean and greatest. */
  readonly wheelRate: readonly [least: number, mean: number, greatest: number];
  /** Metres of road per turn of the wheel. */
  readonly circumference: number;
  /** How hard it shook by order and time; null where the stretch is too short for a map. */
  readonly picture: VibrationPicture | null;
}

export type HearResult =
  | { readonly ok: true; readonly heard: Heard }
  | { readonly ok: false; readonly why: "recording"; readonly fault: RecordingFault }
  | { readonly ok: false; readonly why: "signal"; readonly fault: SignalFault }
  | { readonly ok: false; readonly why: "case"; readonly problems: readonly Problem[] };
