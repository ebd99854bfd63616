import type { Estimate } from "../analysis/estimate.js";
import type { Coincidence } from "../orders/index.js";
import type { ShaftAngle } from "../signal/shaft-angle.js";
import type { AttributionFinding } from "./attribution-finding.js";
import type { BlockPlace } from "./fit-run.js";
import type { Reading } from "./follow-speed.js";
import type { PartOrderName } from "./order-lines.js";
import type { OrderCourse, Resonance } from "./resonance.js";

/** An order's way through a run, one number for each block in which it showed. */
export interface CourseOfOrder extends OrderCourse {
  /** Middles of the blocks, seconds. */
  readonly times: readonly number[];
  /** Rad, (-pi, pi]: amplitude cos(order angle + phase), with `angle` below as the reference shaft's. */
  readonly phases: readonly number[];
}

/** What one order of one part has to do with the vibration. */
export interface Contribution extends PartOrderName {
  /** Its frequencies in the run, Hz. */
  readonly lowest: number;
  readonly highest: number;
  /** False where the recording cannot show it: nothing else is then known of it, and its silence rules nothing out. */
  readonly observable: boolean;
  /** Where it would show instead, if the sensor lets it through: Hz, at its middle frequency; null where it cannot fold back. */
  readonly foldsTo: number | null;
  /** Amplitude (half peak to peak, root mean square over the run) in each channel; null where the channel is a sound, or the order not observable. */
  readonly amplitudes: readonly (Estimate | null)[];
  /** Orders in the same place: amplitude and share are of all of them together. */
  readonly together: readonly PartOrderName[];
  /** Share of the sum of squares, 0 to 1. */
  readonly share: number | null;
  /** That it is the largest contribution; null where it is not observable. */
  readonly probability: number | null;
  /** In the strongest channel, block by block: an order cut, to be drawn against time or speed. */
  readonly course: CourseOfOrder | null;
}

/** Why no order is named. */
export interface Abstained {
  /**
   * coincidence: this run cannot part the likeliest order from another. fold-back: it may be one above half the rate. loose-speed: the speed is known so loosely
   * that it may be another. several: two or more are about as large. too-little: the largest explains next to nothing. nothing: none stands out of the noise.
   */
  readonly reason: "coincidence" | "fold-back" | "loose-speed" | "several" | "too-little" | "nothing";
  /** The orders among which it remains open. */
  readonly between: readonly PartOrderName[];
}

/** Which order of which part a vibration follows. */
export interface Attribution {
  /** Seconds that the signal and the shaft's angle both cover. */
  readonly duration: number;
  /** Samples per second of the recording. */
  readonly rate: number;
  readonly wheelTurns: number;
  /** What was looked at: 0 Hz to this. Shares are of the sum of squares below it. */
  readonly band: number;
  /** Index of the channel in which orders explain most, for whom one figure is enough. */
  readonly strongest: number;
  readonly contributions: readonly Contribution[];
  /** Share that no order explains, 0 to 1. */
  readonly unexplainedShare: number;
  /** That no order is there at all. */
  readonly noneProbability: number;
  /** The likeliest order where it is likelier than not and nothing else can be it. */
  readonly verdict: (PartOrderName & { readonly probability: number }) | null;
  readonly abstained: Abstained | null;
  /** Pairs of observable orders that this run cannot part. */
  readonly coincidences: readonly Coincidence[];
  readonly resonances: readonly Resonance[];
  readonly findings: readonly AttributionFinding[];
  /** The reference shaft's angle as it was used, and how else its speed may be read; a single reading of scale 1 where pulses gave it. */
  readonly angle: ShaftAngle;
  readonly readings: readonly Reading[];
  readonly blocks: readonly BlockPlace[];
}
