import { expect, test } from "vitest";
import { isLeftText, leftState } from "./left-text.js";
import { readMeasure } from "./read-measure.js";

/** "1180x", typed after 1180 had been kept where there was nothing. */
const left = { text: "1180x", of: 1180, was: null };

test("a text stands in its field as long as the case has the value that it was typed over", () => {
  expect(leftState(left, 1180, false)).toBe("in-field");
  expect(leftState({ text: "x", of: null, was: null }, null, false)).toBe("in-field");
});

test("an undo takes the text with the value", () => {
  expect(leftState(left, null, false)).toBe("undone");
});

test("a value from another device counts, and the text stands beside it", () => {
  expect(leftState(left, 1200, false)).toBe("beside");
  expect(leftState({ text: "x", of: null, was: null }, 1200, false)).toBe("beside");
});

test("a text that fits by now does not pass for the value of the case: it stands beside until somebody chose", () => {
  const refused = { text: "45", of: null, was: null };
  const fits = (maximum: number): boolean => readMeasure(refused.text, "length", "metric", { maximum }).ok;
  expect(leftState(refused, null, fits(40))).toBe("in-field");
  expect(leftState(refused, null, fits(70))).toBe("beside");
  expect(leftState({ ...left, text: "1300" }, null, true)).toBe("undone");
});

test("only what this version writes is read back", () => {
  expect(isLeftText(left)).toBe(true);
  for (const other of [null, "x", { text: "x" }, { ...left, text: 4 }, { ...left, of: "1180" }]) expect(isLeftText(other)).toBe(false);
});
