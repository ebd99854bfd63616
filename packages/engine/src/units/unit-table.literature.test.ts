import { expect, test } from "vitest";
import { toSi, type Unit } from "./unit-table.js";

// NIST SP 811 (2008), appendix B.8, from memory; "exact" marks the factors printed in bold there.

/** Half a unit of the seventh digit that the tables print. */
const PRINTED = 0.5e-6;
/** A factor that is exact there may differ by the rounding of two operations. */
const EXACT = 2 * Number.EPSILON;

test.each([
  ["in", 2.54e-2, EXACT],
  ["ft", 3.048e-1, EXACT],
  ["mm", 1e-3, EXACT],
  ["cm", 1e-2, EXACT],
  ["mph", 4.4704e-1, EXACT],
  ["km/h", 2.777778e-1, PRINTED],
  ["lbf.ft", 1.355818, PRINTED],
  ["deg", 1.745329e-2, PRINTED],
  ["arcmin", 2.908882e-4, PRINTED],
  ["arcsec", 4.848137e-6, PRINTED],
  ["rpm", 1.047198e-1, PRINTED],
] as const satisfies readonly (readonly [Unit, number, number])[])("one %s is %d of its SI unit", (unit, factor, tolerance) => {
  expect(Math.abs(toSi(1, unit) / factor - 1)).toBeLessThan(tolerance);
});

test("the foot-pound in full: 0.45359237 kg x 9.80665 m/s2 x 0.3048 m (agreement of 1959, 3rd CGPM 1901)", () => {
  expect(Math.abs(toSi(1, "lbf.ft") / 1.3558179483314003 - 1)).toBeLessThan(EXACT);
});
