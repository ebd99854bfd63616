import type { ShaftAngle } from "../signal/shaft-angle.js";
import { courseOf } from "./contributions.js";
import type { AttributionInput } from "./input.js";
import { type RunReading, readRun } from "./read-run.js";
import { passedResonance, type Resonance, ringing } from "./resonance.js";
import { type Run, shortestBlocks } from "./run.js";

/** Blocks so much longer than they could be hide how an order rises and falls in them. */
const TOO_LONG = 1.5;
/** So many blocks, spread over a run, tell the course of an order however long the run is. */
const ENOUGH = 200;

/**
 * A reading in which a resonance shows: that which was made, unless its blocks are long so as to part close orders. What an order passes in a few turns would be
 * lost in those, and be left over as if the road had made it ring; the run is then fitted in the shortest blocks there are, close orders in one column. Yields the share done.
 */
export function* courseReading(
  run: Run,
  input: AttributionInput,
  angle: ShaftAngle,
  scale: number,
  best: RunReading,
): Generator<number, RunReading> {
  const plan = shortestBlocks(run, ENOUGH);
  if (plan.blocks <= TOO_LONG * best.fit.places.length) return best;
  return yield* readRun(run, input, angle, scale, [], plan);
}

/** The course of a smaller share is mostly noise. */
const WORTH_A_WORD = 0.03;
/** Odds of some 150 to 1. */
const SURELY_THERE = 5;

/** What rings by itself, and what orders make ring as they pass. channel: in which their courses are read. */
export function resonancesIn(reading: RunReading, channel: number, input: AttributionInput): readonly Resonance[] {
  const passed = reading.columns.flatMap(({ presence, share }, j): readonly Resonance[] => {
    const course = presence > SURELY_THERE && share > WORTH_A_WORD ? courseOf(reading, j, channel, input) : null;
    const frequency = course && passedResonance(course);
    return frequency === null ? [] : [{ frequency, excitedBy: "orders", share: null }];
  });
  return [...ringing(reading.fit.residual), ...passed];
}
