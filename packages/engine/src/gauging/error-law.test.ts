import { expect, test } from "vitest";
import { uniformDeviates } from "../uncertainty/index.js";
import { degreesToRadians, type Radians } from "../units/index.js";
import { fuseGauging } from "./fuse-gauging.js";
import type { Gauging } from "./gauging.js";
import { absolute, difference, drivelineWith, gaugingWith } from "./sample-gauging.test-support.js";

/** Refits of data scattered anew: the covariance of 20,000 has a relative standard error of about 1/sqrt(20,000), or 0.7 % of the variances. */
const REFITS = 20_000;
/** Four such standard errors. */
const SHARE = 4 / Math.sqrt(REFITS);

const driveline = drivelineWith("front", "back");
const readings = [
  absolute("source", "face", 0.3),
  absolute("front", "source-end", 0.4),
  absolute("front", "driven-end", 0.4, -1),
  difference("front", "back", 0.2),
  absolute("back", "along", 0.6, -1),
  absolute("driven", "face", 0.5),
];

/** Every reading moved by the errors it can have, all small enough not to contradict one another. */
function scattered(gauging: Gauging, uniform: () => number): Gauging {
  const within = (halfWidth: number) => halfWidth * (2 * uniform() - 1);
  const { accuracy, resolution } = gauging.gauge;
  const error = (placings: number) =>
    Array.from({ length: placings }, () => within(accuracy)).reduce((a, b) => a + b, within(resolution / 2));
  return {
    ...gauging,
    gauge: {
      ...gauging.gauge,
      zeroCheck: gauging.gauge.zeroCheck.map((check) => ({ ...check, value: (check.value + error(1)) as Radians })),
    },
    readings: gauging.readings.map((reading) => ({
      ...reading,
      inclination: (reading.inclination + error(reading.kind === "difference" ? 2 : 1)) as Radians,
    })),
  };
}

/** Covariance of the inclinations by the law of errors, in rad^2. */
function lawCovariance(gauging: Gauging): readonly (readonly number[])[] {
  const { inclinationBy, sources } = fuseGauging(gauging, driveline);
  return inclinationBy.map((a) => inclinationBy.map((b) => sources.reduce((sum, { u }, k) => sum + (a[k] ?? 0) * (b[k] ?? 0) * u * u, 0)));
}

test("the law of errors has the covariance of readings scattered and fused anew", { timeout: 120_000 }, () => {
  const gauging = gaugingWith(readings, { zeroCheckDeg: [0.1, -0.1] });
  const law = lawCovariance(gauging);
  const best = fuseGauging(gauging, driveline).inclination as readonly number[];
  const uniform = uniformDeviates(5);
  const sums = law.map((row) => row.map(() => 0));
  let counted = 0;
  for (let k = 0; k < REFITS; k++) {
    const { inclination, findings } = fuseGauging(scattered(gauging, uniform), driveline);
    // About one set in a thousand strays so far that a reading is set aside; it belongs to another law.
    if (findings.some(({ code }) => code.includes("disagree"))) continue;
    counted++;
    const off = inclination.map((value, s) => (value as number) - (best[s] as number));
    sums.forEach((row, a) => {
      row.forEach((sum, b) => {
        row[b] = sum + (off[a] as number) * (off[b] as number);
      });
    });
  }
  expect(counted).toBeGreaterThan(0.99 * REFITS);
  law.forEach((row, a) => {
    row.forEach((covariance, b) => {
      const scale = Math.sqrt((law[a]?.[a] as number) * (law[b]?.[b] as number));
      expect(Math.abs((sums[a]?.[b] as number) / counted - covariance)).toBeLessThan(SHARE * scale);
    });
  });
});

test("every source is rectangular, measured, and half as wide as its cause", () => {
  const { sources } = fuseGauging(gaugingWith([absolute("source", "face", 1)], { zeroCheckDeg: [0, 0], accuracyDeg: 0.2 }), driveline);
  const ofReadings = sources.filter(({ path }) => path === "gauging[0].readings[0]");
  expect(ofReadings.map(({ shape, origin, of }) => [shape, origin, of])).toEqual([
    ["rectangular", "measured", "source"],
    ["rectangular", "measured", "source"],
  ]);
  expect(ofReadings.map(({ u }) => u * Math.sqrt(3))).toEqual(
    [0.2, 0.05].map((deg) => (degreesToRadians(deg) / Math.sqrt(3)) * Math.sqrt(3)),
  );
});

test("an unchecked zero is a source of its own, assumed", () => {
  const { sources } = fuseGauging(gaugingWith([absolute("source", "face", 1)]), driveline);
  const zero = sources.filter(({ of }) => of === "zero");
  expect(zero).toEqual([
    { path: "gauging[0].gauge", of: "zero", shape: "rectangular", origin: "assumed", u: degreesToRadians(0.3) / Math.sqrt(3) },
  ]);
});
