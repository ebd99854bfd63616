import type { CaseReading, RunsToward } from "@halfturn/casefile";
import type { Numbers } from "@halfturn/words";
import { notedEnd, type ShaftEnd, vehicleEndOf } from "../model/ends.js";
import type { GaugeWords } from "../words/gauge-words.js";

/** Which end is lower, in the vehicle's words; which way the top leans where the gauge stood on a face. */
export const endWords = (end: ShaftEnd, isFace: boolean, runs: RunsToward, words: GaugeWords): string =>
  (isFace ? words.leans : words.lower)[vehicleEndOf(runs, end)];

/** "5.6°, rear end lower": a reading as it was taken. */
export function readingText(reading: CaseReading, runs: RunsToward, words: GaugeWords, numbers: Numbers): string {
  const isFace = "face" in reading;
  const end = notedEnd(reading);
  const lies = end === null ? (isFace ? words.plumb : words.level) : lowered(endWords(end, isFace, runs, words));
  return `${numbers.gaugedAngle(reading.deg)}, ${lies}`;
}

/** Within a sentence. */
export const lowered = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
