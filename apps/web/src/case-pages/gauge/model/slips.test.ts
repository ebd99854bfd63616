import { analyseCase, type Case } from "@halfturn/casefile";
import { expect, test } from "vitest";
import { gaugedTwoPiece } from "./gauged-case.test-support.js";
import { turnReading, withGauging } from "./keep-reading.js";
import { adviceOf, readingAt, slipsOf } from "./slips.js";

const FEW_DRAWS = { seed: 1, draws: 200, accepted: [] };
const analysedOf = (document: Case) => analyseCase(document, {}, FEW_DRAWS)[0] ?? null;
const CLEAN = gaugedTwoPiece();
const FRONT_DRIVEN_END = 2;

test("clean readings show no slip", () => {
  expect(slipsOf(analysedOf(CLEAN), 0)).toEqual([]);
});

test("a lower end noted the wrong way round is named, with the reading to turn", () => {
  const slipped = withGauging(CLEAN, 0, (gauging) => turnReading(gauging, FRONT_DRIVEN_END));
  const slips = slipsOf(analysedOf(slipped), 0);
  expect(slips.map(({ finding }) => finding.code)).toContain("gauging.tube-ends-disagree");
  expect(slips.every(({ readings }) => readings.length > 0)).toBe(true);
  expect(slips.flatMap(({ readings }) => readings)).toContain(FRONT_DRIVEN_END);
});

test("a slip of another gauging is none of this one", () => {
  const slipped = withGauging(CLEAN, 0, (gauging) => turnReading(gauging, FRONT_DRIVEN_END));
  expect(slipsOf(analysedOf(slipped), 1)).toEqual([]);
  expect(readingAt("gauging[0].readings[4].lower", 0)).toBe(4);
  expect(readingAt("gauging[0].readings[4]", 1)).toBeNull();
  expect(readingAt("gauging[0].gauge", 0)).toBeNull();
});

test("what is missing is advice and no slip", () => {
  expect(adviceOf(analysedOf(CLEAN), 0).map(({ code }) => code)).toContain("gauging.heading-not-measured");
});
