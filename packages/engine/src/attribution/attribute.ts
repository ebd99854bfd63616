import { type SignalResult, signalFault, signalValue } from "../signal/signal-fault.js";
import { inPieces, type PausedWork, scaledSteps } from "../uncertainty/index.js";
import type { Attribution } from "./attribution.js";
import { channelFindings } from "./channel-findings.js";
import { contributionsOf, probabilitiesOf } from "./contributions.js";
import type { Evidence } from "./evidence.js";
import { courseReading, resonancesIn } from "./find-resonances.js";
import { findingsOf } from "./findings.js";
import { type FollowedSpeed, followSpeed } from "./follow-speed.js";
import type { AttributionInput } from "./input.js";
import { believed, type RunReading, readRun } from "./read-run.js";
import { prepareRun } from "./run.js";
import { type ChannelCheck, checkChannel } from "./sensor-checks.js";
import { settleSlip, slipOf } from "./settle-slip.js";
import { verdictOf } from "./verdict.js";

/**
 * Says which order of which part a vibration follows. All orders that the recording can show are fitted together, block by block of equal turns; what they
 * explain, with what noise and with what else it could be, decides. Reads block by block and holds one block and a few numbers of each, however long the run.
 * Deterministic. Rejects with the signal's own reason when stopped, within 100 ms.
 * Faults: signal.no-samples, signal.bad-rate, signal.lengths-differ, signal.not-finite, signal.too-short, attribution.not-turning, attribution.no-orders
 * (none that the recording can show).
 */
export const attribute = (input: AttributionInput, work: PausedWork = {}): Promise<SignalResult<Attribution>> =>
  inPieces(attributionSteps(input), work);

/** Shares of the work: looking at the samples, following the speed, finding what slips, and how orders rise and fall. */
const CHECKED = 0.1;
const FOLLOWED = 0.4;
const SETTLED = 0.1;
const COURSE = 0.1;

/** The work of `attribute` in pieces of some 20 ms; every `next` yields the share done. */
export function* attributionSteps(input: AttributionInput): Generator<number, SignalResult<Attribution>> {
  const run = prepareRun(input);
  if (!run.ok) return run;
  const checks: ChannelCheck[] = [];
  for (const [i, channel] of input.channels.entries()) {
    const check = yield* scaledSteps(checkChannel(channel), (CHECKED * i) / input.channels.length, CHECKED / input.channels.length);
    if (check.bad >= 0) return signalFault("signal.not-finite", `channels[${i}].samples[${check.bad}]`);
    checks.push(check);
  }
  const { reference } = input;
  const loose = reference.looseness > 0;
  const geared = ({ part }: { readonly part: string }): boolean =>
    input.parts.every((one) => one.part !== part || slipOf(one, input.parts) === 0);
  const followed: FollowedSpeed = loose
    ? yield* scaledSteps(followSpeed(run.value, reference, geared), CHECKED, FOLLOWED - CHECKED)
    : { angle: reference.angle, readings: [{ scale: 1, weight: 1 }] };
  const begun = loose ? FOLLOWED : CHECKED;
  const slip = yield* scaledSteps(settleSlip(run.value, input.parts, reference, followed), begun, SETTLED);
  const settled = { ...input, parts: slip.parts };
  const fitting = begun + SETTLED;
  const share = (1 - COURSE - fitting) / followed.readings.length;
  const readings: RunReading[] = [];
  for (const [i, { scale }] of followed.readings.entries())
    readings.push(yield* scaledSteps(readRun(slip.run, settled, followed.angle, scale, slip.coincidences), fitting + i * share, share));
  const [best] = readings as [RunReading, ...RunReading[]];
  const scale = followed.readings[0]?.scale ?? 1;
  const course = yield* scaledSteps(courseReading(slip.run, settled, followed.angle, scale, best), 1 - COURSE, COURSE);
  return concluded(
    { input: settled, run: slip.run, followed, slip: slip.changing, readings: [best, ...readings.slice(1)] },
    course,
    checks,
  );
}

function concluded(evidence: Evidence, course: RunReading, checks: readonly ChannelCheck[]): SignalResult<Attribution> {
  const { input, run, followed, readings } = evidence;
  const [best] = readings;
  if (believed(input).every((channel) => !((best.fit.squares[channel] as number) > 0)))
    return signalFault("signal.no-samples", "channels[0]", { samples: 0 });
  const strongest = strongestChannel(best, believed(input));
  const probabilities = probabilitiesOf(readings, followed.readings);
  const contributions = contributionsOf(evidence, probabilities, strongest);
  const noneProbability = readings.reduce((sum, { none }, i) => sum + none * (followed.readings[i]?.weight ?? 0), 0);
  const decided = verdictOf(evidence, contributions, noneProbability);
  const attribution = {
    duration: run.duration,
    rate: input.channels[0]?.samples.rate ?? 0,
    wheelTurns: run.wheelTurns,
    band: run.rate / 2,
    strongest,
    contributions,
    unexplainedShare: best.unexplainedShare,
    noneProbability,
    ...decided,
    coincidences: best.unparted,
    resonances: resonancesIn(course, strongest, input),
    angle: followed.angle,
    readings: followed.readings,
    blocks: best.fit.places,
  };
  return signalValue({ ...attribution, findings: [...channelFindings(input, checks), ...findingsOf(evidence, attribution)] });
}

function strongestChannel({ fit }: RunReading, heard: readonly number[]): number {
  const explained = (channel: number): number => (fit.squares[channel] as number) - (fit.residualSquares[channel] as number);
  return heard.reduce((best, channel) => (explained(channel) > explained(best) ? channel : best), heard[0] ?? 0);
}
