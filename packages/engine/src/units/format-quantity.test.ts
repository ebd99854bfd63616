import fc from "fast-check";
import { expect, test } from "vitest";
import { degreesToRadians } from "./angle.js";
import { metres, radians } from "./brand.js";
import { formatQuantity } from "./format-quantity.js";
import { parseQuantity } from "./parse-quantity.js";
import { toSi, UNITS, type Unit } from "./unit-table.js";

const tenth = { kind: "angle", unit: "deg", decimals: 1 } as const;

test("fixed decimals, either decimal sign, with and without the unit", () => {
  expect(formatQuantity(degreesToRadians(3.4), tenth)).toBe("3.4°");
  expect(formatQuantity(degreesToRadians(-3), { ...tenth, decimalSign: "," })).toBe("-3,0°");
  expect(formatQuantity(metres(0.0127), { kind: "length", unit: "in", decimals: 3, withUnit: false })).toBe("0.500");
  expect(formatQuantity(metres(0.07), { kind: "length", unit: "mm", decimals: 0 })).toBe("70 mm");
});

test("zero has no minus, however it came about", () => {
  expect(formatQuantity(degreesToRadians(-0.04), tenth)).toBe("0.0°");
  expect(formatQuantity(radians(-0), { ...tenth, decimals: 0 })).toBe("0°");
  expect(formatQuantity(degreesToRadians(-0.05), tenth)).toBe("-0.1°");
});

test("quarters of a degree round as they were typed, not as they came back from radians", () => {
  for (let quarters = 1; quarters < 400; quarters += 2) {
    expect(formatQuantity(degreesToRadians(quarters / 4), tenth)).toBe(`${(quarters / 4).toFixed(1)}°`);
  }
});

test("what is not finite is refused", () => {
  expect(() => formatQuantity(radians(Number.NaN), tenth)).toThrow(RangeError);
  expect(() => formatQuantity(radians(Number.POSITIVE_INFINITY), tenth)).toThrow(RangeError);
});

test("what is printed reads back: the same unit, within half of the last digit, and prints the same again", () => {
  const units = fc.constantFrom(...(Object.keys(UNITS) as Unit[]));
  const signs = fc.constantFrom("." as const, "," as const);
  fc.assert(
    fc.property(
      units,
      fc.double({ min: -1e4, max: 1e4, noNaN: true }),
      fc.integer({ min: 0, max: 6 }),
      signs,
      (unit, amount, decimals, decimalSign) => {
        const { kind } = UNITS[unit];
        const format = { kind, unit: unit as never, decimals, decimalSign };
        const printed = formatQuantity(toSi(amount, unit) as never, format);
        const read = parseQuantity(printed, { kind, defaultUnit: "none" as never });
        if (!read.ok) throw new Error(`${printed} gave ${read.code}`);
        expect(read.unit).toBe(unit);
        // Half a last digit, and the thirteen digits that are kept of the amount.
        expect(Math.abs(read.amount - amount)).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-12 * Math.abs(amount));
        expect(formatQuantity(read.value as never, format)).toBe(printed);
      },
    ),
    { numRuns: 2000 },
  );
});
