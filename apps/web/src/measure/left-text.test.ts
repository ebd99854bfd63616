import { expect, test } from "vitest";
import { isLeftText, leftState } from "./left-text.js";

/** "1180x", typed after 1180 had been kept where there was nothing. */
const left = { text: "1180x", of: 1180, was: null };

test("a text stands in its field as long as the case has the value that it was typed over", () => {
  expect(leftState(left, 1180)).toBe("in-field");
  expect(leftState({ text: "x", of: null, was: null }, null)).toBe("in-field");
});

test("an undo takes the text with the value", () => {
  expect(leftState(left, null)).toBe("undone");
});

test("a value from another device counts, and the text stands beside it", () => {
  expect(leftState(left, 1200)).toBe("beside");
  expect(leftState({ text: "x", of: null, was: null }, 1200)).toBe("beside");
});

test("only what this version writes is read back", () => {
  expect(isLeftText(left)).toBe(true);
  for (const other of [null, "x", { text: "x" }, { ...left, text: 4 }, { ...left, of: "1180" }]) expect(isLeftText(other)).toBe(false);
});
