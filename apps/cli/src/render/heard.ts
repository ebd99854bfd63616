import type { AttributionJson, Case } from "@halfturn/casefile";
import { cautionsOf, type NameOf, noteText } from "@halfturn/words";
import type { Heard } from "../listen/listen-to.js";
import { accessoryNames } from "./accessory-names.js";
import { contributionLines } from "./contribution-lines.js";
import { findingLines } from "./findings.js";
import { titleLines } from "./title.js";
import { unseenLines } from "./unseen-lines.js";
import { verdictLines } from "./verdict-lines.js";
import type { View } from "./view.js";
import { wrap } from "./wrap.js";

/** Half of the last digit that is shown. */
const LEAST_CORRECTION = 0.0005;
/** Findings that are told in a part of their own. */
const TOLD = new Set(["attribution.order-not-observable", "attribution.coincidence"]);

/** What a recording was found to follow, for people: the verdict, what it rests on, what it cannot show, and what to watch out for. */
export function heardLines(heard: Heard, document: Case, view: View): readonly string[] {
  const { json } = heard;
  const accessoryName = accessoryNames(document);
  const findings = json.findings.filter(({ code }) => !TOLD.has(code));
  return [
    ...titleLines(document, view),
    ...groundLines(heard, view),
    "",
    ...verdictLines(json, heard.input.parts, accessoryName, view),
    "",
    ...contributionLines(json, accessoryName, view),
    ...unseenLines(json, accessoryName, view),
    ...coincidenceLines(json, accessoryName, view),
    "",
    ...findingLines(findings, document, view),
    "",
    ...recordCautions(view),
  ];
}

function groundLines({ json, names, speedColumn, gear, notes }: Heard, view: View): readonly string[] {
  const { vibration, orders, numbers, terminal } = view.words;
  const { listening } = terminal;
  // Measured from time stamps, a whole number of samples per second is one to some ten digits.
  const whole = Math.abs(json.sampleRateHz - Math.round(json.sampleRateHz)) < 0.005;
  const rate = numbers.plain(json.sampleRateHz, whole ? 0 : 2);
  const corrected = json.speedCorrection;
  const sentences = [
    listening.measured(numbers.all(names), speedColumn ?? listening.theVibration, gear),
    listening.turned(numbers.plain(json.wheelTurns, 0), numbers.plain(json.bandHz, 0)),
    ...(speedColumn === null || corrected === null || Math.abs(corrected) < LEAST_CORRECTION
      ? []
      : [listening.speedCorrected(`${corrected < 0 ? "-" : "+"}${numbers.plain(Math.abs(corrected) * 100, 1)}\u00a0%`)]),
    ...notes.map((note) => noteText(orders, note, numbers)),
  ];
  return [
    view.paint("strong", vibration.heading(`${numbers.plain(json.durationS, 1)}\u00a0s`, rate)),
    ...sentences.flatMap((sentence) => wrap(sentence, view.width, "    ", "  ")),
  ];
}

function coincidenceLines({ coincidences }: AttributionJson, accessoryName: NameOf, view: View): readonly string[] {
  const { orders } = view.words;
  if (coincidences.length === 0) return [];
  return [
    "",
    view.paint("strong", orders.coincidences),
    ...coincidences.flatMap((found) => wrap(orders.coincidence(found, accessoryName), view.width, "    ", "  ")),
  ];
}

/** Beside a recording stands what may hurt while one is made. */
function recordCautions(view: View): readonly string[] {
  const { cautions, labels } = view.words;
  return [
    view.paint("bad", labels.cautions),
    ...[...cautionsOf(cautions, "record"), cautions.defersTo].flatMap((caution) => wrap(caution, view.width, "    ", "  ")),
  ];
}
