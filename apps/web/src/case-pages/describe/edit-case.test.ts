import { newCase } from "@halfturn/casefile";
import { expect, test } from "vitest";
import { changed, editAxle, editComplaint, editJoint, editSection, editVehicle, orGone } from "./edit-case.js";

const document = newCase({ id: "c", title: "t", layout: "two-piece", createdAt: "2026-02-03T08:00:00Z" });

test("an empty value takes its key out, and keys that nobody asked about stay", () => {
  const before = { label: "Van", axleRatio: 3.9, "x-fleet": 7 };
  expect(changed(before, { label: "" })).toEqual({ axleRatio: 3.9, "x-fleet": 7 });
  expect(changed(before, { axleRatio: null })).toEqual({ label: "Van", "x-fleet": 7 });
  expect(changed(undefined, { axleRatio: 4.1 })).toEqual({ axleRatio: 4.1 });
  expect(Object.keys(changed(before, { axleRatio: 4.1 }))).toEqual(["label", "axleRatio", "x-fleet"]);
});

test("an edit reaches one place and shares the rest", () => {
  const edited = editSection(0, 1, { lengthMm: 1200 })(document);
  expect(edited.drivelines[0]?.sections.map(({ lengthMm }) => lengthMm)).toEqual([undefined, 1200]);
  expect(edited.drivelines[0]?.sections[0]).toBe(document.drivelines[0]?.sections[0]);
  expect(editJoint(0, 2, { kind: "ball" })(document).drivelines[0]?.joints.map(({ kind }) => kind)).toEqual(["cross", "cross", "ball"]);
  expect(editAxle(0, { steered: true })(document).drivelines[0]?.axle).toEqual({ steered: true });
  expect(editVehicle({ label: "Van" })(document)).toMatchObject({ vehicle: { label: "Van" }, title: "t" });
  expect(editComplaint({ speedKmh: [60, 80] })(document).complaint).toEqual({ speedKmh: [60, 80] });
});

test("an object with nothing in it goes", () => {
  expect(orGone({})).toBeNull();
  expect(orGone({ a: 0 })).toEqual({ a: 0 });
});
