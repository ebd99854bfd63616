import { expect, test } from "vitest";
import { must } from "../signal/shaft-angle.test-support.js";
import { quietSensor, recorded, shake } from "./attribution-cases.test-support.js";
import { fitRun, type RunFit } from "./fit-run.js";
import { fitColumns } from "./order-lines.js";
import { ringing } from "./resonance.js";
import { prepareRun, shortestBlocks } from "./run.js";

/** A steady order over road noise, fitted in the shortest blocks there are, without the order itself among the columns. */
function unlisted(rate: number, every = 1): RunFit {
  const input = recorded({
    profile: { times: [0, 30, 60], speeds: [20, 26, 20] },
    sources: [shake("wheel", 2, 0.5)],
    roadNoise: 0.5,
    noiseColour: "road",
    sensor: { ...quietSensor, rate },
  });
  const run = must(prepareRun(input));
  const { blocks } = shortestBlocks(run, Number.POSITIVE_INFINITY);
  const others = run.lines.filter(({ part, observable }) => observable && part !== "wheel");
  const steps = fitRun(run, input.reference.angle, fitColumns(others, run.wheelTurns / blocks), [], blocks, 1, every);
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
}

test.each([100, 256, 500, 1024])("no cell of the residual lies between two lines and stays empty, at %i samples a second", (rate) => {
  const { residual } = unlisted(rate);
  // The first line is the mean, which is fitted.
  expect([...residual.slower.subarray(1), ...residual.faster.subarray(1)].filter((cell) => !(cell > 0))).toEqual([]);
});

test.each([100, 256, 500, 1024])("the foot of an order that nobody listed is no resonance, at %i samples a second", (rate) => {
  expect(ringing(unlisted(rate).residual)).toEqual([]);
});

test("every third block tells as much of the shares, from a third of the samples", () => {
  const [all, third] = [unlisted(256), unlisted(256, 3)];
  expect(third.places.length).toBe(Math.ceil(all.places.length / 3));
  const shareOf = ({ residualSquares, squares }: RunFit): number => (residualSquares[0] as number) / (squares[0] as number);
  // Blocks of some two hundred samples, thirteen of them: a tenth.
  expect(Math.abs(shareOf(third) / shareOf(all) - 1)).toBeLessThan(0.1);
});
