import type { CoincidenceJson, PowertrainNote } from "@halfturn/casefile";
import type { OrderCause } from "@halfturn/engine/orders";
import type { NameOf } from "./name-of.js";
import type { Numbers } from "./numbers/numbers.js";
import { written } from "./problem-words.js";

/** The parts that turn on every vehicle; what an engine drives goes by its own label. */
export type CommonPart = "wheel" | "propeller-shaft" | "transfer-shaft" | "engine";

export type NoteWords = {
  readonly [Code in PowertrainNote["code"]]: (
    params: Extract<PowertrainNote, { readonly code: Code }>["params"],
    numbers: Numbers,
  ) => string;
};

/** What is said about parts that turn and the orders they can shake at. */
export interface OrderWords {
  /** "the propeller shaft's first order", for the middle of a sentence. */
  readonly orderOf: (part: string, order: number, accessoryName: NameOf) => string;
  readonly parts: { readonly [P in CommonPart]: string };
  /** Short: the part stands beside it. */
  readonly causes: { readonly [C in OrderCause]: string };
  /** "Turning at 105 km/h in gear 4"; the gear is null where it is not known. */
  readonly heading: (speed: string, gear: string | null) => string;
  readonly part: string;
  readonly turnsPerSecond: string;
  readonly order: string;
  readonly cause: string;
  readonly orders: string;
  /** "At 80 to 90 km/h": over the speeds of the complaint. */
  readonly atSpeeds: (from: string, to: string) => string;
  readonly inComplaint: (speed: string, from: string, to: string) => string;
  readonly outsideComplaint: (speed: string, from: string, to: string) => string;
  /** How far one turn of the wheel goes, and whence that is known: null = given in the case. */
  readonly turnOfWheel: (distance: string, size: string | null) => string;
  readonly coincidences: string;
  readonly noCoincidences: string;
  /** How long the recording is that the coincidences are for. */
  readonly recordingOf: (turns: string, seconds: string, distance: string) => string;
  readonly coincidence: (of: CoincidenceJson, accessoryName: NameOf) => string;
  readonly notes: NoteWords;
}

/** The words of a language for one coincidence, put together here so that all languages say the same things. */
export interface CoincidenceWords {
  readonly orderOf: (part: string, order: number, accessoryName: NameOf) => string;
  /** A recording of this length parts them. */
  readonly apart: (first: string, second: string, separation: string, turns: string, distance: string) => string;
  readonly another: string;
  readonly sameByGear: (first: string, second: string) => string;
  readonly same: (first: string, second: string) => string;
}

/** The faster part first: it is the one that is mistaken for the slower. */
export const coincidenceText =
  (numbers: Numbers, words: CoincidenceWords): OrderWords["coincidence"] =>
  ({ first, second, separationWheelOrders, wheelTurns, distanceM, partedByGear }, accessoryName) => {
    const faster = capital(words.orderOf(second.part, second.order, accessoryName));
    const slower = words.orderOf(first.part, first.order, accessoryName);
    if (wheelTurns === null || distanceM === null) return partedByGear ? words.sameByGear(faster, slower) : words.same(faster, slower);
    const separation = written(Number(separationWheelOrders.toPrecision(2)), numbers);
    const needed = words.apart(faster, slower, separation, numbers.plain(wheelTurns, 0), numbers.distance(distanceM));
    return `${needed}${partedByGear ? `; ${words.another}` : ""}.`;
  };

/** A sentence begins with a capital. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The sentence of one note. */
export function noteText({ notes }: OrderWords, note: PowertrainNote, numbers: Numbers): string {
  // The union's code and params belong together; the compiler cannot follow that through an index.
  const words = notes[note.code] as (params: PowertrainNote["params"], numbers: Numbers) => string;
  return words(note.params, numbers);
}
