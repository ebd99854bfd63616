import { expect, test } from "vitest";
import { directedAmount } from "./directed-amount.js";

test("an amount has a value once its direction is chosen; nought needs none", () => {
  expect(directedAmount(40, "plus")).toBe(40);
  expect(directedAmount(40, "minus")).toBe(-40);
  expect(directedAmount(40, null)).toBeNull();
  expect(directedAmount(0, null)).toBe(0);
  expect(directedAmount(0, "minus")).toBe(0);
  expect(directedAmount(null, "plus")).toBeNull();
});
