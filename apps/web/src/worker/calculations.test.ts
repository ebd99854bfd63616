import { readFileSync } from "node:fs";
import type { Case } from "@halfturn/casefile";
import { expect, test } from "vitest";
import { calculations } from "./calculations.js";
import { FULL_DRAWS, QUICK_DRAWS } from "./draws.js";

const file = (name: string): string =>
  readFileSync(new URL(`../../../../packages/casefile/examples/${name}.halfturn.json`, import.meta.url), "utf8");

const example = (name: string): Case => {
  const restored = calculations.restore(file(name));
  if (!restored.ok) throw new Error(`the example ${name} is no case`);
  return restored.case;
};

/** As the design says of all long work. */
const STOPS_WITHIN_MS = 100;
/** A loaded machine takes the processor away for about this long. */
const MACHINE_MS = 400;
/** Planning takes a second on a quiet machine. */
const PATIENT_MS = 30_000;

/** With so many sizes that planning takes seconds. */
const manySizes = (document: Case): Case => ({
  ...document,
  adjusters: (document.adjusters ?? []).map((adjuster) =>
    adjuster.kind === "support-drop" || adjuster.kind === "mount-spacer"
      ? { ...adjuster, stock: { minMm: -6, maxMm: 30, stepMm: 0.25 } }
      : adjuster,
  ),
});

test(
  "a plan that was stopped ends at once, and says that it was stopped",
  async () => {
    let stopAt = 0;
    const shares: number[] = [];
    const planning = calculations.plan(manySizes(example("corrected")), { maxChanges: 3 }, 1, (share) => {
      shares.push(share);
      if (shares.length !== 3) return;
      stopAt = performance.now();
      calculations.stop(1);
    });
    await expect(planning).rejects.toMatchObject({ name: "AbortError" });
    expect(performance.now() - stopAt).toBeLessThan(STOPS_WITHIN_MS + MACHINE_MS);
    expect(Math.max(...shares)).toBeLessThan(1);
  },
  PATIENT_MS,
);

test(
  "a stop is for one piece of work: the next plan of the same case runs to its end",
  async () => {
    calculations.stop(2);
    const shares: number[] = [];
    const planned = await calculations.plan(example("two-piece"), {}, 3, (share) => shares.push(share));
    expect(planned.ok).toBe(true);
    expect([...shares].sort((a, b) => a - b)).toEqual(shares);
  },
  PATIENT_MS,
);

test("the quick answer has the values of the full one; only its intervals are rougher", () => {
  const document = example("two-piece");
  const values = (draws: number) =>
    calculations.analyse(document, draws).flatMap(({ analysis }) => analysis.joints.map(({ operatingAngle }) => operatingAngle?.value));
  expect(values(QUICK_DRAWS)).toEqual(values(FULL_DRAWS));
  expect(values(QUICK_DRAWS).every((value) => typeof value === "number")).toBe(true);
});

test("what the worker answers can be handed over: plain data, nothing that the way out of a worker takes away", () => {
  const document = example("corrected");
  for (const answer of [calculations.analyse(document, QUICK_DRAWS), calculations.taught(document), calculations.restore("{}")]) {
    expect(structuredClone(answer)).toEqual(answer);
  }
});

test("a case and its file are the same thing twice", () => {
  const document = example("four-wheel-drive");
  expect(calculations.restore(calculations.serialise(document))).toEqual({ ok: true, case: document });
});
