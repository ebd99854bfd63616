import { describe, expect, it } from "vitest";
import budgets from "../budgets.json" with { type: "json" };
import { BENCHMARKS } from "./benchmarks/index.js";
import { judge } from "./judge.js";
import { calibrationKernel } from "./kernel.js";
import { measure, median } from "./measure.js";
import { table } from "./table.js";

/** A clock that gives the kernel 10 ms and the run 25 ms, whatever they take. */
function scriptedClock() {
  let calls = 0;
  let now = 0;
  const steps = [10, 0, 25, 0];
  return () => {
    const at = now;
    now += steps[calls++ % steps.length] as number;
    return at;
  };
}

const twoAndAHalf = { name: "two-and-a-half", what: "nothing", prepare: () => () => 1 };

describe("bench", () => {
  it("measures in kernels", async () => {
    const { ratio, runMs, kernelMs } = await measure(twoAndAHalf, scriptedClock());
    expect({ ratio, runMs, kernelMs }).toEqual({ ratio: 2.5, runMs: 25, kernelMs: 10 });
  });

  it("measures in runs of a peer where there is one", async () => {
    let peers = 0;
    const preparePeer = () => async () => ++peers;
    const { ratio } = await measure({ ...twoAndAHalf, preparePeer }, scriptedClock());
    expect(ratio).toBe(2.5);
    expect(peers).toBeGreaterThan(1);
  });

  it("refuses to time work that gives nothing", async () => {
    await expect(measure({ ...twoAndAHalf, prepare: () => () => Number.NaN }, scriptedClock())).rejects.toThrow(RangeError);
  });

  it("takes the middle value", () => {
    expect(median([9, 1, 5])).toBe(5);
    expect(() => median([])).toThrow(RangeError);
  });

  it("holds a measurement to its budget", async () => {
    const measured = await measure(twoAndAHalf, scriptedClock());
    expect(judge([measured], { "two-and-a-half": 2.5 })[0]?.within).toBe(true);
    const [over] = judge([measured], { "two-and-a-half": 2.4 });
    expect(over?.within).toBe(false);
    expect(table(over ? [over] : [])).toContain("OVER");
  });

  it("knows no budget without a benchmark and no benchmark without a budget", async () => {
    const measured = await measure(twoAndAHalf, scriptedClock());
    expect(() => judge([measured], {})).toThrow(/has no budget/);
    expect(() => judge([measured], { "two-and-a-half": 3, gone: 1 })).toThrow(/gone/);
    expect(BENCHMARKS.map(({ name }) => name).sort()).toEqual(Object.keys(budgets).sort());
  });

  it("has a yardstick that always does the same work", () => {
    expect(calibrationKernel()).toBe(calibrationKernel());
  });
});
