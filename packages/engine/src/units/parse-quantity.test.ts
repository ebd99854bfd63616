import fc from "fast-check";
import { expect, test } from "vitest";
import { parseQuantity } from "./parse-quantity.js";
import { toSi, UNITS, type Unit } from "./unit-table.js";

const angle = (text: string) => parseQuantity(text, { kind: "angle", defaultUnit: "deg" });
const length = (text: string) => parseQuantity(text, { kind: "length", defaultUnit: "mm" });

test.each([
  ["3,4", 3.4, "deg"],
  ["3.4", 3.4, "deg"],
  ["-0.5", -0.5, "deg"],
  ["\u22120.5", -0.5, "deg"],
  ["\u20130,5", -0.5, "deg"],
  ["+2", 2, "deg"],
  ["- 2°", -2, "deg"],
  ["-0", 0, "deg"],
  [".5", 0.5, "deg"],
  ["5.", 5, "deg"],
  ["5.6 deg", 5.6, "deg"],
  ["5.6\u00a0Degrees", 5.6, "deg"],
  ["1,234", 1.234, "deg"],
  ["  3\u202f° ", 3, "deg"],
  ["3° 25'", 3 + 25 / 60, "deg"],
  ["3°25'30\"", 3 + 25.5 / 60, "deg"],
  ["3°25′30″", 3 + 25.5 / 60, "deg"],
  ["-3° 25'", -(3 + 25 / 60), "deg"],
  ["3 deg 25.5 min", 3 + 25.5 / 60, "deg"],
  ["30'", 30, "arcmin"],
  ["0.05 rad", 0.05, "rad"],
  ["1 1/2°", 1.5, "deg"],
] as const)("the angle %j is %d %s", (text, amount, unit) => {
  expect(angle(text)).toEqual({ ok: true, amount, unit, value: toSi(amount, unit) });
});

test.each([
  ["12", 12, "mm"],
  ["12 mm", 12, "mm"],
  ["12MM", 12, "mm"],
  ["1.2 m", 1.2, "m"],
  ["7 cm", 7, "cm"],
  ["0.5 in", 0.5, "in"],
  ["0.5 in.", 0.5, "in"],
  ["1 1/8 in", 1.125, "in"],
  ["1-1/8 in", 1.125, "in"],
  ['1\u00a01/8"', 1.125, "in"],
  ["1/8", 0.125, "mm"],
  ["-1/8 in", -0.125, "in"],
  ["1½ in", 1.5, "in"],
  ['⅜"', 0.375, "in"],
  ["5'3\"", 5.25, "ft"],
  ["5 ft 3 1/2 in", 5 + 3.5 / 12, "ft"],
] as const)("the length %j is %d %s", (text, amount, unit) => {
  expect(length(text)).toEqual({ ok: true, amount, unit, value: toSi(amount, unit) });
});

test.each([
  ["80 N·m", "torque", "lbf.ft", "N.m"],
  ["80 Nm", "torque", "lbf.ft", "N.m"],
  ["80 lbf ft", "torque", "N.m", "lbf.ft"],
  ["80 ft-lb", "torque", "N.m", "lbf.ft"],
  ["80", "speed", "km/h", "km/h"],
  ["80 mph", "speed", "km/h", "mph"],
  ["80 m/s", "speed", "km/h", "m/s"],
  ["80 km/h", "speed", "mph", "km/h"],
  ["80 r/min", "rotation", "rad/s", "rpm"],
] as const)("%j as a %s, of %s by default, is in %s", (text, kind, defaultUnit, unit) => {
  expect(parseQuantity(text, { kind, defaultUnit: defaultUnit as never })).toEqual({ ok: true, amount: 80, unit, value: toSi(80, unit) });
});

test.each([
  ["", "quantity.empty", 0, {}],
  [" \u00a0", "quantity.empty", 0, {}],
  ["abc", "quantity.number-expected", 0, {}],
  ["-", "quantity.number-expected", 1, {}],
  ["--3", "quantity.number-expected", 1, {}],
  ["°", "quantity.number-expected", 0, {}],
  ["1,234.5", "quantity.second-decimal-sign", 5, {}],
  ["3.4.5", "quantity.second-decimal-sign", 3, {}],
  ["1 234", "quantity.unexpected", 2, { found: "2" }],
  ["3 x", "quantity.unknown-unit", 2, { found: "x" }],
  ["3 degx", "quantity.unknown-unit", 2, { found: "degx" }],
  ["1e3", "quantity.unknown-unit", 1, { found: "e" }],
  ["3 mm", "quantity.unit-of-another-kind", 2, { unit: "mm", kind: "length", expected: "angle" }],
  ["3 m/s", "quantity.unit-of-another-kind", 2, { unit: "m/s", kind: "speed", expected: "angle" }],
  ["3° 25", "quantity.unit-expected", 5, {}],
  ["3° 25' x", "quantity.unexpected", 7, { found: "x" }],
  ["3° -2'", "quantity.unexpected", 3, { found: "-" }],
  ["25' 3°", "quantity.unit-out-of-order", 5, { unit: "deg" }],
  ["3° 4°", "quantity.unit-out-of-order", 4, { unit: "deg" }],
  ['3° 4"', "quantity.unit-out-of-order", 4, { unit: "arcsec" }],
  ["3.5° 25'", "quantity.fraction-before-part", 0, {}],
  ["3° 60'", "quantity.part-too-large", 3, { below: 60, unit: "arcmin" }],
  ["1/0", "quantity.zero-denominator", 2, {}],
  ["1 1/0", "quantity.zero-denominator", 4, {}],
  ["1 9/8", "quantity.improper-fraction", 2, {}],
  ["8 8/8", "quantity.improper-fraction", 2, {}],
  ["9".repeat(400), "quantity.too-large", 0, {}],
] as const)("%j is refused: %s at %d", (text, code, at, params) => {
  expect(angle(text)).toEqual({ ok: false, code, at, params });
});

test("whatever is typed, the answer is a finite value or a place inside the text", () => {
  const pieces = fc.constantFrom(
    "1",
    "23",
    "0",
    ".",
    ",",
    "/",
    "-",
    "\u2212",
    " ",
    "\u00a0",
    "°",
    "'",
    '"',
    "mm",
    "in",
    "deg",
    "½",
    "x",
    "ft",
    "°C",
    "😀",
  );
  const texts = fc.oneof(
    fc.array(pieces, { maxLength: 8 }).map((list) => list.join("")),
    fc.string(),
  );
  fc.assert(
    fc.property(texts, fc.constantFrom("angle" as const, "length" as const), (text, kind) => {
      const result = parseQuantity(text, { kind, defaultUnit: (kind === "angle" ? "deg" : "mm") as never });
      if (result.ok) {
        expect(Number.isFinite(result.value)).toBe(true);
        expect(UNITS[result.unit as Unit].kind).toBe(kind);
        expect(Object.is(result.amount, -0)).toBe(false);
      } else {
        expect(result.at).toBeGreaterThanOrEqual(0);
        expect(result.at).toBeLessThanOrEqual(text.length);
      }
    }),
    { numRuns: 2000 },
  );
});
