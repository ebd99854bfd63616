import type { CaseGauge } from "@halfturn/casefile";
import type { Block } from "./blocks.js";
import { dayText } from "./day-text.js";
import type { Subject } from "./subject.js";

function zeroCheckText({ words, numbers, catalogue: { labels } }: Subject, gauge: CaseGauge): string {
  const shown = (gauge.zeroCheck ?? []).map(
    ({ deg, lower }) => `${numbers.gaugedAngle(deg)} (${lower ? words.facts.displayLower[lower] : labels.level})`,
  );
  const pairs: string[] = [];
  for (let k = 0; k + 1 < shown.length; k += 2) pairs.push(words.facts.zeroPair(shown[k] as string, shown[k + 1] as string));
  return pairs.length === 0 ? words.facts.zeroNotChecked : pairs.join("; ");
}

/** How the vehicle stood and what gauge was used. */
export function gaugedStateBlocks(subject: Subject): readonly Block[] {
  const { words, numbers, gauged, catalogue } = subject;
  const { labels } = catalogue;
  if (!gauged) return [];
  const { gauge, state } = gauged;
  const gaugeText = [
    gauge.label,
    words.facts.step(numbers.gaugedAngle(gauge.resolutionDeg)),
    words.facts.accuracy(numbers.gaugedAngle(gauge.accuracyDeg), gauge.common ?? false),
  ];
  return [
    {
      kind: "facts",
      items: [
        { label: labels.rideHeight, value: labels.rideHeights[state.rideHeight] },
        { label: labels.wheels, value: labels.wheelSupports[state.wheels] },
        { label: labels.takenAt, value: gauged.takenAt ? dayText(gauged.takenAt, catalogue.language) : words.facts.takenAtNotGiven },
        { label: words.facts.gauge, value: gaugeText.filter(Boolean).join("; ") },
        { label: words.facts.zeroCheck, value: zeroCheckText(subject, gauge) },
      ],
    },
  ];
}
