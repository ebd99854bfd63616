import { type CaseGauging, newCase } from "@halfturn/casefile";
import { expect, test } from "vitest";
import { endNearby, nextOpen, stepOfReading, stepsOf, takenAt } from "./step.js";

const drivelineOf = (layout: "two-piece" | "four-wheel-drive", index = 0) => {
  const driveline = newCase({ id: "c", title: "", layout, createdAt: "2026-01-19" }).drivelines[index];
  if (!driveline) throw new Error("no driveline");
  return driveline;
};

const gaugingWith = (readings: CaseGauging["readings"]): CaseGauging => ({
  driveline: "rear",
  stage: "as-found",
  state: { rideHeight: "normal", wheels: "on-ground" },
  gauge: { resolutionDeg: 0.1, accuracyDeg: 0.1 },
  readings,
});

const keys = (steps: readonly { readonly key: string }[]) => steps.map(({ key }) => key);

test("a two-piece driveline is read at six places in power order, every section at both ends", () => {
  expect(keys(stepsOf(drivelineOf("two-piece"), "places", null))).toEqual([
    "source",
    "front:source-end",
    "front:driven-end",
    "back:source-end",
    "back:driven-end",
    "driven",
  ]);
});

test("neighbours are read against one another, and every shaft by tape", () => {
  expect(keys(stepsOf(drivelineOf("two-piece"), "pairs", null))).toEqual([
    "between:source,front",
    "between:front,back",
    "between:back,driven",
  ]);
  expect(keys(stepsOf(drivelineOf("four-wheel-drive", 1), "tape", null))).toEqual(["heading:source", "heading:shaft", "heading:driven"]);
});

test("a reading along a whole section and one between shafts that are no neighbours have their steps too", () => {
  const gauging = gaugingWith([
    { at: "front", deg: 1, lower: "driven-end", side: "left" },
    { between: ["source", "driven"], deg: 0, side: "left" },
  ]);
  const driveline = drivelineOf("two-piece");
  expect(keys(stepsOf(driveline, "places", gauging))).toContain("front");
  expect(keys(stepsOf(driveline, "pairs", gauging)).at(-1)).toBe("between:source,driven");
  expect(stepOfReading(driveline, gauging, 1)).toEqual({ way: "pairs", step: 3 });
});

test("repeats belong to one step, and the next step is the next that is open, round the end", () => {
  const driveline = drivelineOf("two-piece");
  const steps = stepsOf(driveline, "places", null);
  const gauging = gaugingWith([
    { at: "driven", deg: 2, lower: "driven-end", side: "left" },
    { at: "source", deg: 2, lower: "driven-end", side: "left" },
    { at: "source", deg: 2.1, lower: "driven-end", side: "left" },
  ]);
  expect(takenAt(steps[0] as (typeof steps)[number], gauging)).toEqual([1, 2]);
  expect(nextOpen(steps, 0, gauging)).toBe(1);
  expect(nextOpen(steps, 4, gauging)).toBe(1);
  const all = gaugingWith(steps.flatMap((step) => (step.kind === "place" ? [{ at: step.at, deg: 0, side: "left" as const }] : [])));
  expect(nextOpen(steps, 2, all)).toBeNull();
});

test("the lower end of the other end of a tube is offered for this one, of a zeroed pair only its own", () => {
  const gauging = gaugingWith([
    { at: "front:source-end", deg: 1, lower: "source-end", side: "left" },
    { at: "back:source-end", deg: 2, lower: "driven-end", side: "left" },
    { at: "back:driven-end", deg: 0, side: "left" },
  ]);
  const driveline = drivelineOf("two-piece");
  const places = stepsOf(driveline, "places", gauging);
  const ends = places.map((step) => endNearby(step, gauging));
  expect(ends).toEqual([null, "source-end", "source-end", "driven-end", "driven-end", null]);
  expect(stepsOf(driveline, "pairs", gauging).map((step) => endNearby(step, gauging))).toEqual([null, null, null]);
  const zeroed = gaugingWith([{ between: ["front", "back"], deg: 2, lower: "source-end", side: "left" }]);
  expect(stepsOf(driveline, "pairs", zeroed).map((step) => endNearby(step, zeroed))).toEqual([null, "source-end", null]);
});
