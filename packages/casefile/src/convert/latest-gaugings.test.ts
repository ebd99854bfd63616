import { expect, test } from "vitest";
import { exampleCase } from "../example-cases.test-support.js";
import { latestGaugings } from "./latest-gaugings.js";

const onePiece = exampleCase("one-piece");
const fourWheelDrive = exampleCase("four-wheel-drive");

test("the last gauging of the latest stage speaks for each driveline", () => {
  expect(latestGaugings(onePiece)).toEqual([{ driveline: 0, gauging: 2 }]);
  expect(latestGaugings(fourWheelDrive)).toEqual([
    { driveline: 0, gauging: 0 },
    { driveline: 1, gauging: 1 },
  ]);
});

test("after is later than as-found wherever it stands in the file", () => {
  const reversed = { ...onePiece, gauging: [...(onePiece.gauging ?? [])].reverse() };
  expect(latestGaugings(reversed)).toEqual([{ driveline: 0, gauging: 0 }]);
  expect(latestGaugings(reversed, { stage: "as-found" })).toEqual([{ driveline: 0, gauging: 2 }]);
});

test("a stage asked for, and a driveline that was never gauged in it", () => {
  expect(latestGaugings(onePiece, { stage: "as-found" })).toEqual([{ driveline: 0, gauging: 1 }]);
  expect(latestGaugings(fourWheelDrive, { stage: "after" })).toEqual([
    { driveline: 0, gauging: null },
    { driveline: 1, gauging: null },
  ]);
});

test("one gauging asked for by its index brings its driveline alone", () => {
  expect(latestGaugings(fourWheelDrive, { gauging: 1 })).toEqual([{ driveline: 1, gauging: 1 }]);
  expect(latestGaugings(onePiece, { gauging: 0, stage: "as-found" })).toEqual([{ driveline: 0, gauging: 0 }]);
  expect(latestGaugings(onePiece, { gauging: 0, stage: "after" })).toEqual([]);
  expect(latestGaugings(onePiece, { gauging: 3 })).toEqual([]);
});
