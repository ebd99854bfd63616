import type { Abstained } from "@halfturn/engine/attribution";
import type { Comfort, SignalFault, SignalFaultCode } from "@halfturn/engine/signal";
import type { Numbers } from "./numbers/numbers.js";

export type SignalFaultWords = {
  readonly [Code in SignalFaultCode]: (params: SignalFault["params"], numbers: Numbers) => string;
};

/** What the verdict says: names of orders, and numbers as people read them. */
export interface VerdictParts {
  /** "the propeller shaft's first order". */
  readonly order: string;
  readonly cause: string;
  readonly probability: string;
  /** Share of the vibration that it explains. */
  readonly share: string;
}

/** What is said of a vibration and the part it follows. */
export interface VibrationWords {
  /** One line each: what is wrong with the samples or the speed, and what to do. */
  readonly faults: SignalFaultWords;
  readonly comfort: { readonly [C in Comfort]: string };
  readonly verdict: (of: VerdictParts) => string;
  /** Why no order is named; `orders` is "a or b", empty where none is in question. */
  readonly abstained: { readonly [R in Abstained["reason"]]: (orders: string) => string };
  readonly heading: (seconds: string, rate: string) => string;
  readonly amplitude: string;
  readonly share: string;
  readonly probability: string;
  readonly frequency: string;
  readonly notObservable: string;
  readonly unexplained: string;
  /** "0.62 m/s²". */
  readonly acceleration: (value: string) => string;
}

/** What is wrong with a signal and what to do, on one line. */
export const signalFaultText = ({ faults }: VibrationWords, { code, params }: SignalFault, numbers: Numbers): string =>
  faults[code](params, numbers);
