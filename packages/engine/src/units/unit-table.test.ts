import fc from "fast-check";
import { expect, test } from "vitest";
import { degreesToRadians, rpmToRadiansPerSecond } from "./angle.js";
import { rpm } from "./brand.js";
import { fromSi, partOf, toSi, UNITS, type Unit } from "./unit-table.js";

const units = Object.keys(UNITS) as Unit[];
const amounts = fc.double({ min: -1e6, max: 1e6, noNaN: true });
/** Four roundings: there and back. */
const RELATIVE = 4 * Number.EPSILON;

test("there and back is the same amount", () => {
  fc.assert(
    fc.property(fc.constantFrom(...units), fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (unit, amount) => {
      expect(Math.abs(fromSi(toSi(amount, unit) as never, unit) / amount - 1)).toBeLessThanOrEqual(RELATIVE);
    }),
  );
});

test("degrees and revolutions agree with their own converters, to the last digit for degrees", () => {
  fc.assert(
    fc.property(amounts, (amount) => {
      expect(toSi(amount, "deg")).toBe(degreesToRadians(amount));
      expect(Math.abs(toSi(amount, "rpm") - rpmToRadiansPerSecond(rpm(amount)))).toBeLessThanOrEqual(RELATIVE * Math.abs(amount));
    }),
  );
});

test("whole numbers of decimal and inch units come out as the decimal they are", () => {
  expect([toSi(3, "mm"), toSi(70, "mm"), toSi(1, "in"), toSi(10, "in"), toSi(36, "km/h"), toSi(1, "ft")]).toEqual([
    0.003, 0.07, 0.0254, 0.254, 10, 0.3048,
  ]);
});

test("a part makes its greater unit by its count", () => {
  const parts = units.filter((unit) => partOf(unit));
  expect(parts).toEqual(["arcmin", "arcsec", "in"]);
  for (const unit of parts) {
    const { unit: greater, count } = partOf(unit) as { unit: Unit; count: number };
    expect(Math.abs(toSi(count, unit) / toSi(1, greater) - 1)).toBeLessThanOrEqual(RELATIVE);
  }
});
