import fc from "fast-check";
import { expect, test } from "vitest";
import { toDriveline } from "../convert/to-driveline.js";
import { restore } from "../restore/restore.js";
import { serialise } from "../serialise/serialise.js";
import { LAYOUTS, newCase } from "./new-case.js";

test("a new case of any layout is a case, and claims nothing as measured", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...LAYOUTS),
      fc.string({ minLength: 1, maxLength: 200 }),
      fc.string(),
      fc.date({ min: new Date("1990-01-01"), max: new Date("2099-12-31"), noInvalidDate: true }),
      (layout, id, title, date) => {
        const document = newCase({ id, title, layout, createdAt: date.toISOString() });
        expect(restore(serialise(document))).toEqual({ ok: true, case: document });
        expect(document.drivelines.flatMap(({ sections }) => sections).every((section) => section.phasingMeasured === false)).toBe(true);
      },
    ),
  );
});

test("each layout has its shafts and joints in power order", () => {
  const parts = LAYOUTS.map((layout) => {
    const document = newCase({ id: "a", title: "a", layout, createdAt: "2026-01-02" });
    return document.drivelines.map((driveline, k) => {
      const { joints, sections } = toDriveline(document, k, null);
      return `${driveline.id} ${driveline.runs}: ${sections.map(({ id }) => id)} / ${joints.map(({ kind }) => kind)}`;
    });
  });
  expect(parts).toEqual([
    ["rear rearward: shaft / cross,cross"],
    ["rear rearward: front,back / cross,cross,cross"],
    ["rear rearward: front,middle,back / cross,cross,cross,cross"],
    ["rear rearward: shaft / cross,cross", "front forward: shaft / double-cross,cross"],
  ]);
});
