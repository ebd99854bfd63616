import type { Case, ComplaintReach, Turning } from "@halfturn/casefile";
import { fromSi, metres } from "@halfturn/engine/units";
import { type CommonPart, type NameOf, noteText } from "@halfturn/words";
import { accessoryNames } from "./accessory-names.js";
import { coincidenceLines } from "./coincidences.js";
import { orderLines } from "./order-lines.js";
import { scaled, valueWithin } from "./quantity-text.js";
import { table } from "./table.js";
import { titleLines } from "./title.js";
import type { View } from "./view.js";
import { wrap } from "./wrap.js";

const PER_MINUTE = 60;

/** What turns at a road speed, for people: rates, orders with their causes, and orders that lie too close. */
export function ordersLines(turning: Turning, reach: ComplaintReach | null, document: Case, view: View): readonly string[] {
  const { json, basis, recording } = turning;
  const { orders, numbers, explanations } = view.words;
  const accessoryName = accessoryNames(document);
  const partName: NameOf = (part) => orders.parts[part as CommonPart] ?? accessoryName(part);
  const sentences = [
    orders.turnOfWheel(turnOfWheel(turning, view), sizeUsed(document)),
    ...basis.notes.map((note) => noteText(orders, note, numbers)),
    ...(reach === null ? [] : [complaintText(json.speedKmh, reach, view)]),
  ];
  return [
    ...titleLines(document, view),
    view.paint("strong", orders.heading(numbers.roadSpeed(json.speedKmh), basis.gear)),
    ...rateLines(turning, partName, view),
    "",
    ...sentences.flatMap((sentence) => wrap(sentence, view.width, "    ", "  ")),
    "",
    ...orderLines(json.parts, reach, partName, view),
    "",
    ...coincidenceLines(json.coincidences, recording, accessoryName, view),
    "",
    ...wrap(explanations.intervalsMean, view.width, "").map((line) => view.paint("aside", line)),
  ];
}

function rateLines({ json }: Turning, partName: NameOf, view: View): readonly string[] {
  const { orders, labels, numbers } = view.words;
  const header = [orders.part, orders.turnsPerSecond, "rpm"].map((text) => view.paint("aside", text));
  const rows = json.parts.map(({ part, turnsPerSecond }) => [
    partName(part),
    valueWithin(turnsPerSecond, numbers, labels.notKnown),
    valueWithin(scaled(turnsPerSecond, PER_MINUTE), numbers, labels.notKnown),
  ]);
  return table([header, ...rows], ["left", "right", "right"]);
}

/** The wheel's rate carries the uncertainty of the circumference and of nothing else. */
function turnOfWheel({ json, basis }: Turning, { words: { numbers, labels } }: View): string {
  const rate = json.parts[0]?.turnsPerSecond ?? null;
  const circumference = fromSi(metres(basis.powertrain.circumference.value), numbers.lengthUnit);
  return `${valueWithin(rate && scaled(rate, circumference / rate.value), numbers, labels.notKnown)} ${numbers.lengthUnit}`;
}

function complaintText(speed: number, { speedKmh }: ComplaintReach, { words: { orders, numbers } }: View): string {
  const [from, to] = speedKmh;
  const say = speed >= from && speed <= to ? orders.inComplaint : orders.outsideComplaint;
  return say(numbers.roadSpeed(speed), ...numbers.roadSpeeds(from, to));
}

/** The size that the circumference was worked out from; null where the circumference itself was given. */
function sizeUsed({ vehicle }: Case): string | null {
  const tyre = vehicle?.tyre;
  return tyre === undefined || "rollingCircumferenceMm" in tyre ? null : tyre.size;
}
