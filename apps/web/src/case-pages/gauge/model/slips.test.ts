import { analyseCase, type Case, type CaseGauging } from "@halfturn/casefile";
import { expect, test } from "vitest";
import { gaugedTwoPiece } from "./gauged-case.test-support.js";
import { keepReading, withGauging } from "./keep-reading.js";
import { adviceOf, readingAt, slipsOf } from "./slips.js";

const FEW_DRAWS = { seed: 1, draws: 200, accepted: [] };
const gaugingOf = (document: Case): CaseGauging => {
  const gauging = document.gauging?.[0];
  if (!gauging) throw new Error("not gauged");
  return gauging;
};
const analysedOf = (document: Case) => analyseCase(document, {}, FEW_DRAWS)[0] ?? null;
const CLEAN = gaugedTwoPiece();
const FRONT_DRIVEN_END = 2;

/** The clean case with one reading noted with the other end lower. */
const TURNED = withGauging(CLEAN, 0, (gauging) =>
  keepReading(gauging, { at: "front:driven-end", deg: 5.6, lower: "source-end", side: "left" }, FRONT_DRIVEN_END),
);
const MISREAD = withGauging(CLEAN, 0, (gauging) =>
  keepReading(gauging, { at: "front:driven-end", deg: 6.5, lower: "driven-end", side: "left" }, FRONT_DRIVEN_END),
);
const slipsIn = (document: Case) => slipsOf(analysedOf(document), 0, gaugingOf(document));

test("clean readings show no slip", () => {
  expect(slipsIn(CLEAN)).toEqual([]);
});

test("a lower end noted the wrong way round is asked about first, by its shaft", () => {
  const [first, ...others] = slipsIn(TURNED);
  expect(first?.finding.code).toBe("gauging.wrong-side-of-level");
  expect(first?.lowerEndOf).toBe("front");
  expect(first?.readings).toContain(FRONT_DRIVEN_END);
  expect(others.map(({ finding }) => finding.code)).toContain("gauging.tube-ends-disagree");
});

test("a misread display names both ends of the tube, and looking at the shaft would not mend it", () => {
  const [first] = slipsIn(MISREAD);
  expect(first?.finding.code).toBe("gauging.tube-ends-disagree");
  expect([...(first?.readings ?? [])].sort()).toEqual([FRONT_DRIVEN_END - 1, FRONT_DRIVEN_END]);
  expect(first?.lowerEndOf).toBeNull();
});

test("a slip of another gauging is none of this one", () => {
  expect(slipsOf(analysedOf(TURNED), 1, gaugingOf(TURNED))).toEqual([]);
  expect(readingAt("gauging[0].readings[4].lower", 0)).toBe(4);
  expect(readingAt("gauging[0].readings[4]", 1)).toBeNull();
  expect(readingAt("gauging[0].gauge", 0)).toBeNull();
});

test("what is missing is advice and no slip", () => {
  expect(adviceOf(analysedOf(CLEAN), 0).map(({ code }) => code)).toContain("gauging.heading-not-measured");
});
