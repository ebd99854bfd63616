import { uniformDeviates } from "@halfturn/engine/uncertainty";
import { expect, test } from "vitest";
import { type HiddenCause, hiddenCause, named, observable, separable } from "./hidden-cause.js";

const RUNS = 300;
/** Agreed: the right order first in 95 of 100, from -6 dB. */
const NAMED = 0.95;
/** Causes that a phone cannot see, with a vehicle's usual shaking beside them: so seldom may that be taken for the cause. */
const MISLED = 0.1;

const uniform = uniformDeviates(4711);
const runs: HiddenCause[] = [];

test.each([1, 2, 3])("road tests of hundred %i each come to an end", () => {
  for (let k = 0; k < RUNS / 3; k++) runs.push(hiddenCause(runs.length, uniform));
  expect(runs.every(({ result }) => result.contributions.length > 0)).toBe(true);
});

test(`of ${RUNS} road tests with one hidden cause the right order is named where it can be told apart, and none where it cannot`, () => {
  expect(runs).toHaveLength(RUNS);
  const seen = runs.filter(observable);
  const apart = seen.filter(separable);
  const right = apart.filter((run) => named(run) === `${run.part} ${run.order}`);
  const wrong = apart.filter((run) => named(run) !== null && named(run) !== `${run.part} ${run.order}`);
  const together = seen.filter((run) => !separable(run));
  for (const run of apart.filter((one) => !right.includes(one)))
    console.info(`${run.part} ${run.order} by ${run.by} at ${run.snr.toFixed(1)} dB: ${named(run) ?? run.result.abstained?.reason}`);
  console.info(`${apart.length} can be told apart: ${right.length} right, ${wrong.length} wrong; ${together.length} cannot`);
  const unseen = runs.filter((run) => !observable(run));
  console.info(
    `${unseen.length} lie above what the recording shows: ${unseen.map(named).filter((name) => name !== null).length} name something else`,
  );
  expect(unseen.map(named).filter((name) => name !== null).length).toBeLessThanOrEqual(MISLED * unseen.length);
  expect(apart.length).toBeGreaterThan(RUNS / 3);
  expect(together.length).toBeGreaterThan(RUNS / 10);
  expect(right.length / apart.length).toBeGreaterThanOrEqual(NAMED);
  expect(together.map(named).filter((name) => name !== null)).toEqual([]);
});
