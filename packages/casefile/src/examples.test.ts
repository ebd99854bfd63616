import { angleBetween, directionOf } from "@halfturn/engine/geometry";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { degreesToRadians, radiansToDegrees } from "@halfturn/engine/units";
import { expect, test } from "vitest";
import { latestGaugings } from "./convert/latest-gaugings.js";
import { toGauging } from "./convert/to-gauging.js";
import { judgedCorrections } from "./correction/judged-corrections.js";
import { exampleCase, exampleNames, exampleText } from "./example-cases.test-support.js";
import { restore } from "./restore/restore.js";

/** Readings are written to a tenth of a degree; sums of them are exact to far below that. */
const ROUNDING_DEG = 1e-9;

test.each(exampleNames)("%s is a case, with somebody's complaint and a gauging of every driveline", (name) => {
  expect(restore(exampleText(name))).toMatchObject({ ok: true });
  const document = exampleCase(name);
  expect(document.complaint?.speedKmh).toHaveLength(2);
  for (const { gauging } of latestGaugings(document)) expect(gauging).not.toBeNull();
  for (const { gauge } of document.gauging ?? []) expect(gauge.zeroCheck).toHaveLength(2);
});

test("two-piece has the joint angles 3.2, 0.5 and 3.0 degrees and a front section a quarter turn out (common practice, no source)", () => {
  const document = exampleCase("two-piece");
  const { readings } = toGauging(document, 0);
  const shafts = [0, 1, 3, 5].map((k) => {
    const inclination = readings[k]?.inclination ?? degreesToRadians(Number.NaN);
    return directionOf({ inclination, heading: degreesToRadians(0) });
  });
  const angles = shafts.slice(1).map((shaft, k) => radiansToDegrees(angleBetween(shafts[k] ?? shaft, shaft)));
  [3.2, 0.5, 3].forEach((expected, k) => {
    expect(Math.abs((angles[k] ?? Number.NaN) - expected)).toBeLessThan(ROUNDING_DEG);
  });
  expect(document.drivelines[0]?.sections.map(({ phasingDeg }) => phasingDeg)).toEqual([90, 0]);
});

test("three-piece carries a lower end written the wrong way round: the two ends of one tube lie seven degrees apart", () => {
  const { readings } = toGauging(exampleCase("three-piece"), 0);
  const [atSource, atDriven] = readings.filter((reading) => reading.kind === "absolute" && reading.shaft === "middle");
  const apart =
    radiansToDegrees(atSource?.inclination ?? degreesToRadians(0)) - radiansToDegrees(atDriven?.inclination ?? degreesToRadians(0));
  expect(Math.abs(apart - 7)).toBeLessThan(ROUNDING_DEG);
});

test("four-wheel-drive carries a side written down wrong: twice the gauge's zero stands between the ends of the front tube", () => {
  const { gauge, readings } = toGauging(exampleCase("four-wheel-drive"), 1);
  const [first, turned] = gauge.zeroCheck.map(({ value }) => radiansToDegrees(value));
  const zero = ((first ?? Number.NaN) + (turned ?? Number.NaN)) / 2;
  const ends = readings.flatMap((reading) =>
    reading.kind === "absolute" && reading.shaft === "shaft" ? [radiansToDegrees(reading.inclination) - reading.zeroSign * zero] : [],
  );
  expect(Math.abs(Math.abs((ends[0] ?? Number.NaN) - (ends[1] ?? Number.NaN)) - 2 * zero)).toBeLessThan(ROUNDING_DEG);
});

test("one-piece keeps a first gauging with the wheels hanging, which does not speak for the vehicle", () => {
  const document = exampleCase("one-piece");
  expect(document.gauging?.map(({ state }) => state.wheels)).toEqual(["hanging", "on-drive-on-lift", "on-drive-on-lift"]);
  expect(latestGaugings(document, { stage: "as-found" })).toEqual([{ driveline: 0, gauging: 1 }]);
});

test("at least two examples can be corrected: lengths, axle and stock are all there", () => {
  const ready = exampleNames.filter((name) => {
    const { drivelines, adjusters } = exampleCase(name);
    const measured = drivelines.every(({ sections, axle }) => axle?.centreToJointMm && sections.every(({ lengthMm }) => lengthMm));
    return measured && (adjusters ?? []).length > 0;
  });
  expect(ready).toEqual(["one-piece", "two-piece", "four-wheel-drive", "corrected"]);
});

test("corrected stands as foretold once its wedges are in", () => {
  const [only, ...more] = judgedCorrections(exampleCase("corrected"), { defaults: DEFAULT_LIMITS, draws: 100, seed: 1 });
  expect(more).toEqual([]);
  expect(only).toMatchObject({ before: [{ gauging: 0 }], after: [{ gauging: 1 }], judged: { ok: true, value: { verdict: "confirmed" } } });
});
