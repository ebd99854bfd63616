import { expect, test } from "vitest";
import { designCase } from "../design-case.test-support.js";
import { restore } from "../restore/restore.js";
import type { Case } from "../schema/case.js";
import { withDriveline, withoutDriveline } from "./built.js";
import { arePartsNamed, isNamed } from "./named.js";
import { newCase } from "./new-case.js";

const empty = newCase({ id: "a", title: "", layout: "four-wheel-drive", createdAt: "2026-01-02T03:04:05Z" });
const stock = { stock: { sizesMm: [5] } };
const gauging = {
  driveline: "front",
  stage: "as-found",
  state: { rideHeight: "normal", wheels: "on-ground" },
  gauge: { resolutionDeg: 0.1, accuracyDeg: 0.1 },
  readings: [],
};

/** A case with something in it, as a file would say it. */
function having(keys: object): Case {
  const restored = restore({ ...empty, ...keys });
  if (!restored.ok) throw new Error(JSON.stringify(restored.problems));
  return restored.case;
}

const said = (keys: object) => ["front", "rear"].map((id) => [arePartsNamed(having(keys), id), isNamed(having(keys), id)]);

test("nothing names the drivelines of a new case", () => {
  expect(said({})).toEqual([
    [false, false],
    [false, false],
  ]);
});

test.each([
  ["a reading", { gauging: [{ ...gauging, readings: [{ at: "source", deg: 0, side: "left" }] }] }],
  ["a heading", { gauging: [{ ...gauging, headings: [{ of: "shaft", deg: 0 }] }] }],
  ["a phasing that was seen", { gauging: [{ ...gauging, phasings: [{ section: "shaft", phasingDeg: 0 }] }] }],
  ["a bearing's spacers", { adjusters: [{ kind: "support-drop", id: "a", driveline: "front", joint: "J2", ...stock }] }],
  ["a spline", { adjusters: [{ kind: "rephase", id: "a", driveline: "front", section: "shaft", splineTeeth: 16 }] }],
  [
    "a correction",
    {
      gauging: [gauging],
      corrections: [
        { state: "made", chosenAt: "2026-01-02T03:04:05Z", basis: [{ driveline: "front", gauging: 0 }], changes: [], predicted: [] },
      ],
    },
  ],
])("%s names the parts of its driveline, and of no other", (_, keys) => {
  expect(said(keys)).toEqual([
    [true, true],
    [false, false],
  ]);
});

test.each([
  ["an empty gauging", { gauging: [gauging] }],
  ["wedges", { adjusters: [{ kind: "axle-wedge", id: "a", driveline: "front", stock: { sizesDeg: [1] } }] }],
  ["a load", { states: [{ id: "laden", driveline: "front" }] }],
])("%s names the driveline alone", (_, keys) => {
  expect(said(keys)).toEqual([
    [false, true],
    [false, false],
  ]);
});

test("what other programs wrote may name any part", () => {
  expect(said({ runouts: [{ on: "shaft" }] }).flat()).toEqual([true, true, true, true]);
});

test("a driveline is added behind the others and goes again without a trace", () => {
  for (const runs of ["rearward", "forward"] as const) {
    const more = withDriveline(empty, runs);
    const added = more.drivelines[2];
    expect([added?.id, added?.runs]).toEqual([runs === "forward" ? "front-2" : "rear-2", runs]);
    expect(withoutDriveline(more, added?.id ?? "")).toEqual(empty);
  }
  const outline = restore(designCase());
  if (!outline.ok) throw new Error("the outline is a case");
  expect(isNamed(outline.case, "rear")).toBe(true);
  expect(withDriveline(outline.case, "forward").drivelines.map(({ id }) => id)).toEqual(["rear", "front"]);
});
