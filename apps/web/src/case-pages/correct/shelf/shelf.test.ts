import { readFileSync } from "node:fs";
import { type Case, examples, newCase, restore, serialise } from "@halfturn/casefile";
import { ADJUSTER_KINDS } from "@halfturn/engine/correction";
import { expect, test } from "vitest";
import { freeId, kindsFor, newAdjuster, usualParts } from "./new-adjuster.js";
import { formStock, isStocked, otherWay, withStock } from "./stock.js";

const open = (name: string): Case => {
  const restored = restore(readFileSync(new URL(examples.find((one) => one.name === name)?.url ?? ""), "utf8"));
  if (!restored.ok) throw new Error(name);
  return restored.case;
};

test("every kind that is new on the shelf is one that the case file takes", () => {
  const document = open("two-piece");
  const [driveline] = document.drivelines;
  if (!driveline) throw new Error("no driveline");
  expect(kindsFor(driveline)).toEqual(ADJUSTER_KINDS);
  const adjusters = ADJUSTER_KINDS.map((kind) => newAdjuster(kind, freeId(kind, []), driveline, "x"));
  const again = restore(serialise({ ...document, adjusters }));
  expect(again.ok ? again.case.adjusters : again.problems).toEqual(adjusters);
});

test("a one-piece driveline has no bearing to move", () => {
  const [driveline] = open("one-piece").drivelines;
  if (!driveline) throw new Error("no driveline");
  expect(kindsFor(driveline)).not.toContain("support-drop");
  expect(kindsFor(driveline)).toContain("rephase");
});

test("an id is never given twice", () => {
  expect(freeId("axle-wedge", [])).toBe("wedge");
  expect(freeId("axle-wedge", [{ id: "wedge" }, { id: "wedge-2" }])).toBe("wedge-3");
});

test("stock reads the same whatever its unit, and goes there and back", () => {
  for (const adjuster of open("two-piece").adjusters ?? []) {
    if (isStocked(adjuster)) expect(withStock(adjuster, formStock(adjuster.stock)).stock).toEqual(adjuster.stock);
  }
});

test("a range becomes its sizes without nought, and sizes become the range by their smallest gap", () => {
  expect(otherWay({ kind: "range", minimum: -0.2, maximum: 0.3, step: 0.1 })).toEqual({
    kind: "sizes",
    sizes: [-0.2, -0.1, 0.1, 0.2, 0.3],
  });
  expect(otherWay({ kind: "sizes", sizes: [3, 6, 12] })).toEqual({ kind: "range", minimum: 0, maximum: 12, step: 3 });
});

test.each(["one-piece", "two-piece", "three-piece", "four-wheel-drive"])(
  "the usual parts of a %s driveline are taken by the case file, nothing fitted",
  (name) => {
    const document = open(name);
    const [driveline] = document.drivelines;
    if (!driveline) throw new Error("no driveline");
    const adjusters = usualParts(driveline, (kind) => kind);
    const supports = driveline.joints.filter(({ support }) => support).map(({ id }) => id);
    expect(adjusters.flatMap((part) => (part.kind === "support-drop" ? part.joint : []))).toEqual(supports);
    expect(adjusters.map((part) => ("fittedMm" in part ? part.fittedMm : "fittedDeg" in part ? part.fittedDeg : null))).toEqual(
      adjusters.map(() => 0),
    );
    const again = restore(serialise({ ...document, adjusters }));
    expect(again.ok ? again.case.adjusters : again.problems).toEqual(adjusters);
  },
);

test("a second driveline gets parts of its own, told apart from those of the first", () => {
  const [rear, front] = newCase({ id: "c", title: "t", layout: "four-wheel-drive", createdAt: "2026-05-04T07:30:00Z" }).drivelines;
  if (!rear || !front) throw new Error("a four-wheel drive has two drivelines");
  const first = usualParts(rear, (kind) => kind);
  const second = usualParts(front, (kind) => kind, first);
  expect(second.map((part) => "driveline" in part && part.driveline)).toEqual(second.map(() => "front"));
  const ids = [...first, ...second].map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
});
