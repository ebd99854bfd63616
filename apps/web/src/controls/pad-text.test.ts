import { expect, test } from "vitest";
import { afterKey, type PadKey } from "./pad-text.js";

const typed = (keys: readonly PadKey[], sign: "." | "," = "."): string => keys.reduce((text, key) => afterKey(text, key, sign), "");

test("digits and one decimal sign make a number, in the sign of the language", () => {
  expect(typed(["5", "point", "6"])).toBe("5.6");
  expect(typed(["5", "point", "6"], ",")).toBe("5,6");
  expect(typed(["point", "4", "point", "2"])).toBe("0.42");
  expect(typed(["0", "0", "7"])).toBe("7");
});

test("back takes the last away, clear takes all", () => {
  expect(typed(["1", "2", "back"])).toBe("1");
  expect(typed(["back"])).toBe("");
  expect(typed(["1", "2", "clear", "3"])).toBe("3");
});

test("a blank and one stroke make a fraction of an inch", () => {
  expect(typed(["1", "blank", "blank", "1", "slash", "slash", "8"])).toBe("1 1/8");
  expect(typed(["slash", "blank"])).toBe("");
});

test("a leaning key does not fill the field for ever", () => {
  expect(typed(Array.from({ length: 40 }, () => "9" as const))).toHaveLength(9);
});
