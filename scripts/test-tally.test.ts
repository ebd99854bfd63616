import { describe, expect, it } from "vitest";
import { tally } from "./test-tally.mjs";

const file = (status: string, ...tests: readonly string[]) => ({
  name: "a.test.ts",
  status,
  assertionResults: tests.map((test) => ({ status: test })),
});

describe("tally", () => {
  it("counts what passed and failed", () => {
    const run = tally({ testResults: [file("passed", "passed", "passed"), file("failed", "failed", "passed")] });
    expect(run).toEqual({ passed: 3, failed: 1, notRun: 0, closingLine: "3 passed, 1 failed", good: false });
  });

  it("is good only where something passed and nothing was left out", () => {
    expect(tally({ testResults: [file("passed", "passed")] }).good).toBe(true);
    expect(tally({ testResults: [] }).good).toBe(false);
    expect(tally({ testResults: [file("passed", "passed", "pending")] }).good).toBe(false);
  });

  it("counts a file that broke before its tests as a failure", () => {
    expect(tally({ testResults: [file("passed", "passed"), file("failed")] }).closingLine).toBe("1 passed, 1 failed");
  });
});
