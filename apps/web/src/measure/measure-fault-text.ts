import { type Catalogue, quantityFaultText } from "@halfturn/words";
import type { MeasureWords } from "./measure-words.js";
import type { MeasureFault } from "./read-measure.js";

/** What is wrong with a text and what to do about it; bounds are said with the name of the field, in the unit that it shows. */
export function measureFaultText(
  fault: MeasureFault,
  words: MeasureWords,
  { correction }: Catalogue,
  label: string,
  amountText: (value: number) => string,
): string {
  if (fault.code === "unreadable") return words.remedy(quantityFaultText(correction, fault.fault));
  if (fault.code === "not-whole") return words.notWhole;
  const { minimum, above, maximum, below } = fault.bounds;
  const say = (bound: number | undefined, how: (text: string) => string): readonly string[] =>
    bound === undefined ? [] : [how(amountText(bound))];
  const parts = [...say(minimum, words.atLeast), ...say(above, words.above), ...say(maximum, words.atMost), ...say(below, words.below)];
  return words.bounds(label, parts);
}
