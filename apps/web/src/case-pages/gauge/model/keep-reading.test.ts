import { type CaseGauging, restore } from "@halfturn/casefile";
import { expect, test } from "vitest";
import { gaugedTwoPiece } from "./gauged-case.test-support.js";
import {
  dropReading,
  keepHeading,
  keepReading,
  noteLowerEnd,
  noteReading,
  readingOf,
  withGauging,
  withNewGauging,
} from "./keep-reading.js";
import type { PairStep, PlaceStep } from "./step.js";

const SOURCE: PlaceStep = { kind: "place", key: "source", at: "source", shaft: "source", place: "along" };
const FRONT: PlaceStep = { kind: "place", key: "front:source-end", at: "front:source-end", shaft: "front", place: "source-end" };
const PAIR: PairStep = { kind: "pair", key: "between:source,front", from: "source", to: "front" };

const EMPTY: CaseGauging = {
  driveline: "rear",
  stage: "as-found",
  state: { rideHeight: "normal", wheels: "on-ground" },
  gauge: { resolutionDeg: 0.1, accuracyDeg: 0.1 },
  readings: [],
};

test("a reading is spelled as the case file spells it", () => {
  expect(readingOf(FRONT, { deg: 5.6, lower: "driven-end", side: "left", isFace: false })).toEqual({
    at: "front:source-end",
    deg: 5.6,
    lower: "driven-end",
    side: "left",
  });
  expect(readingOf(SOURCE, { deg: 2.4, lower: "source-end", side: "right", isFace: true })).toEqual({
    at: "source",
    face: "square",
    deg: 2.4,
    topLeans: "source-end",
    side: "right",
  });
  expect(readingOf(PAIR, { deg: 3, lower: "driven-end", side: "left", isFace: false })).toEqual({
    between: ["source", "front"],
    deg: 3,
    lower: "driven-end",
    side: "left",
  });
});

test("a level reading has no lower end", () => {
  expect(readingOf(FRONT, { deg: 0, lower: "driven-end", side: "left", isFace: false })).toEqual({
    at: "front:source-end",
    deg: 0,
    side: "left",
  });
});

test("taking a reading again keeps its note and foreign keys, and none of its old words", () => {
  const old = { at: "front:source-end", deg: 6.5, lower: "driven-end", side: "left", notes: "paint", "x-photo": "p1" } as const;
  expect(readingOf(FRONT, { deg: 5.6, lower: "source-end", side: "left", isFace: true }, old)).toEqual({
    at: "front:source-end",
    face: "square",
    deg: 5.6,
    topLeans: "source-end",
    side: "left",
    notes: "paint",
    "x-photo": "p1",
  });
});

test("readings are added, replaced, noted and dropped in place", () => {
  const first = readingOf(SOURCE, { deg: 2.4, lower: "driven-end", side: "left", isFace: true });
  const second = readingOf(FRONT, { deg: 5.6, lower: "driven-end", side: "left", isFace: false });
  const two = keepReading(keepReading(EMPTY, first, null), second, null);
  expect(two.readings).toEqual([first, second]);
  expect(keepReading(two, first, 1).readings).toEqual([first, first]);
  expect(noteReading(noteReading(two, 1, "rust"), 1, "").readings[1]).toEqual(second);
  expect(noteReading(two, 1, "")).toBe(two);
  expect(dropReading(two, 0).readings).toEqual([second]);
  expect(keepHeading(EMPTY, { of: "front", lateralMm: 6, toward: "right", overMm: 1180 }, null).headings).toHaveLength(1);
});

test("every edit leaves a case that can be read back, and touches one gauging only", () => {
  const document = gaugedTwoPiece();
  const taken = readingOf(FRONT, { deg: 5.5, lower: "driven-end", side: "left", isFace: false });
  const more = withGauging(withNewGauging(document, EMPTY), 1, (gauging) => keepReading(gauging, taken, null));
  expect(more.gauging?.[0]).toBe(document.gauging?.[0]);
  expect(more.gauging?.[1]?.readings).toEqual([taken]);
  expect(restore(more).ok).toBe(true);
  expect(withGauging(document, 9, (gauging) => dropReading(gauging, 0))).toBe(document);
});

test("an answer to which end is lower holds for every reading of that shaft, and for no zeroed one and no level one", () => {
  const level = readingOf(FRONT, { deg: 0, lower: null, side: "left", isFace: false });
  const readings = [
    readingOf(SOURCE, { deg: 2.4, lower: "driven-end", side: "left", isFace: true }),
    readingOf(FRONT, { deg: 5.6, lower: "driven-end", side: "left", isFace: false }),
    readingOf(FRONT, { deg: 5.6, lower: "source-end", side: "left", isFace: true }),
    level,
    readingOf(PAIR, { deg: 3.2, lower: "driven-end", side: "left", isFace: false }),
  ];
  const answered = noteLowerEnd({ ...EMPTY, readings }, "front", "source-end").readings;
  expect(answered.map((reading) => ("face" in reading ? reading.topLeans : reading.lower))).toEqual([
    "driven-end",
    "source-end",
    "source-end",
    undefined,
    "driven-end",
  ]);
});
