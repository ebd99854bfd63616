import { expect, test } from "vitest";
import { doubtOf, offPlumb, typedAngle, withSignPut } from "./entry-text.js";

test.each([
  ["5.6", 5.6],
  ["5,6", 5.6],
  [".4", 0.4],
  ["0", 0],
  [" 3° 30' ", 3.5],
  ["90", 90],
])("%s is %d degrees", (text, deg) => {
  expect(typedAngle(text)).toEqual({ ok: true, deg });
});

test.each([
  ["", "empty"],
  ["-2.4", "signed"],
  ["−0,5", "signed"],
  ["-0", "signed"],
  ["+3", "signed"],
  ["2.4.1", "not-a-number"],
  ["abc", "not-a-number"],
  ["5 mm", "not-a-number"],
  ["90.1", "too-steep"],
])("%s is refused as %s", (text, fault) => {
  expect(typedAngle(text)).toEqual({ ok: false, fault });
});

test("what a display near upright means off plumb keeps its digits", () => {
  expect([87.6, 60, 56, 30, 14].map(doubtOf)).toEqual(["upright", "upright", "steep", "steep", null]);
  expect(offPlumb(87.6)).toBe(2.4);
  expect(offPlumb(90)).toBe(0);
});

test("only a whole number may have lost its decimal sign", () => {
  expect(withSignPut(56)).toBe(5.6);
  expect(withSignPut(32.5)).toBeNull();
});
