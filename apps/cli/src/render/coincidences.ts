import type { CoincidenceJson, Turning } from "@halfturn/casefile";
import type { NameOf } from "@halfturn/words";
import type { View } from "./view.js";
import { wrap } from "./wrap.js";

/** Which orders the recording cannot tell apart, and what would. */
export function coincidenceLines(
  coincidences: readonly CoincidenceJson[],
  { wheelTurns, seconds, metres }: Turning["recording"],
  accessoryName: NameOf,
  view: View,
): readonly string[] {
  const { orders, numbers } = view.words;
  const recording = orders.recordingOf(
    numbers.plain(wheelTurns, 0),
    numbers.plain(seconds, seconds < 10 ? 1 : 0),
    numbers.distance(metres),
  );
  const sentences =
    coincidences.length === 0 ? [orders.noCoincidences] : coincidences.map((found) => orders.coincidence(found, accessoryName));
  return [
    view.paint("strong", orders.coincidences),
    ...wrap(recording, view.width, "  "),
    ...sentences.flatMap((sentence) => wrap(sentence, view.width, "    ", "  ")),
  ];
}
