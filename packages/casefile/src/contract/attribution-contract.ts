import type { Abstained, Resonance } from "@halfturn/engine/attribution";
import type { Finding } from "@halfturn/engine/findings";
import type { Quantity } from "./analysis-contract.js";
import type { CoincidenceJson } from "./orders-contract.js";

export interface OrderNameJson {
  readonly part: string;
  readonly order: number;
}

export interface ContributionJson extends OrderNameJson {
  /** Lowest and highest in the recording. */
  readonly frequencyHz: readonly [number, number];
  /** false: the recording cannot show it, and nothing else is known of it. */
  readonly observable: boolean;
  /** Where it would show instead if the sensor lets it through. */
  readonly foldsToHz: number | null;
  /** Half peak to peak, root mean square over the recording, in `channel`; null where it cannot be told. */
  readonly amplitudeMS2: Quantity;
  readonly share: number | null;
  readonly probability: number | null;
  /** Orders in the same place: amplitude and share are of all of them together. */
  readonly together: readonly OrderNameJson[];
}

/** What `listen --json` prints. */
export interface AttributionJson {
  readonly format: "halfturn-attribution";
  readonly version: 1;
  readonly durationS: number;
  readonly sampleRateHz: number;
  readonly wheelTurns: number;
  /** Shares are of the vibration from 0 Hz to this. */
  readonly bandHz: number;
  /** The channel of the amplitudes: the one in which orders explain most. */
  readonly channel: string;
  /** Share by which the speed, logged or followed, was corrected; null where pulses gave it. */
  readonly speedCorrection: number | null;
  readonly contributions: readonly ContributionJson[];
  readonly unexplainedShare: number;
  /** Probability that no order is there at all. */
  readonly noneProbability: number;
  readonly verdict: (OrderNameJson & { readonly probability: number }) | null;
  readonly abstained: { readonly reason: Abstained["reason"]; readonly between: readonly OrderNameJson[] } | null;
  readonly coincidences: readonly CoincidenceJson[];
  readonly resonances: readonly {
    readonly frequencyHz: number;
    readonly excitedBy: Resonance["excitedBy"];
    readonly share: number | null;
  }[];
  readonly findings: readonly Finding[];
}
