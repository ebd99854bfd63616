import { expect, test } from "vitest";
import { renamedParts } from "./renamed-parts.js";

test("a row is known by its place where its name alone changed", () => {
  expect(renamedParts(["1", "2", "3"], ["1", "low", "3"])).toEqual([["2", "low"]]);
  expect(renamedParts(["1", "2"], ["first", "low"])).toEqual([
    ["1", "first"],
    ["2", "low"],
  ]);
});

test("nothing is renamed where nothing changed, rows changed places, or one came or went", () => {
  expect(renamedParts(["1", "2"], ["1", "2"])).toEqual([]);
  expect(renamedParts(["1", "2"], ["2", "1"])).toEqual([]);
  expect(renamedParts(["1", "2"], ["2"])).toEqual([]);
  expect(renamedParts(["1"], ["1", "2"])).toEqual([]);
});
