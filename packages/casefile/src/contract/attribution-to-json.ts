import type { Attribution, Contribution } from "@halfturn/engine/attribution";
import type { Finding } from "@halfturn/engine/findings";
import type { AttributionJson, ContributionJson } from "./attribution-contract.js";
import { coincidenceToJson } from "./coincidence-to-json.js";
import { quantity } from "./quantity.js";

export interface AttributionContext {
  /** Names of the channels, in the order in which they were attributed. */
  readonly channels: readonly string[];
  /** Metres of road per turn of the wheel. */
  readonly circumference: number;
  /** What was found before: in reading the file, in the pulses, in the case. */
  readonly findings: readonly Finding[];
}

/** An attribution as `listen --json` prints it. A finding about a channel names it under `channel`. */
export function attributionToJson(attribution: Attribution, { channels, circumference, findings }: AttributionContext): AttributionJson {
  const { duration, rate, wheelTurns, band, strongest, readings, verdict, abstained } = attribution;
  const followed = readings[0]?.scale ?? 1;
  return {
    format: "halfturn-attribution",
    version: 1,
    durationS: duration,
    sampleRateHz: rate,
    wheelTurns,
    bandHz: band,
    channel: channels[strongest] ?? "",
    speedCorrection: followed === 1 ? null : followed - 1,
    contributions: attribution.contributions.map((one) => contributionToJson(one, strongest)),
    unexplainedShare: attribution.unexplainedShare,
    noneProbability: attribution.noneProbability,
    verdict: verdict && { part: verdict.part, order: verdict.order, probability: verdict.probability },
    abstained: abstained && { reason: abstained.reason, between: abstained.between.map(({ part, order }) => ({ part, order })) },
    coincidences: attribution.coincidences.map((one) => coincidenceToJson(one, circumference)),
    resonances: attribution.resonances.map(({ frequency, excitedBy, share }) => ({ frequencyHz: frequency, excitedBy, share })),
    findings: [...findings, ...attribution.findings.map((finding) => withChannel(finding, channels))],
  };
}

const contributionToJson = (
  { part, order, lowest, highest, observable, foldsTo, amplitudes, share, probability, together }: Contribution,
  channel: number,
): ContributionJson => ({
  part,
  order,
  frequencyHz: [lowest, highest],
  observable,
  foldsToHz: foldsTo,
  amplitudeMS2: quantity(amplitudes[channel] ?? null),
  share,
  probability,
  together: together.map((other) => ({ part: other.part, order: other.order })),
});

function withChannel(finding: Finding, channels: readonly string[]): Finding {
  const [, index] = /^channels\[(\d+)\]$/.exec(finding.path) ?? [];
  const channel = index === undefined ? undefined : channels[Number(index)];
  return channel === undefined ? finding : { ...finding, params: { ...finding.params, channel } };
}
