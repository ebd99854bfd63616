import fc from "fast-check";
import { expect, test } from "vitest";
import type { Units } from "../device/settings.js";
import type { Measure } from "./measures.js";
import { measureText, readMeasure } from "./read-measure.js";

const read = (text: string, measure: Measure, units: Units = "metric", bounds = {}) => readMeasure(text, measure, units, bounds);

test("comma and point are the same, and a number without a unit is in the unit shown", () => {
  expect(read("1180,5", "length")).toEqual({ ok: true, value: 1180.5 });
  expect(read("1180.5", "length")).toEqual({ ok: true, value: 1180.5 });
  expect(read("10", "length", "us")).toEqual({ ok: true, value: 254 });
  expect(read("60", "road-speed", "us")).toEqual({ ok: true, value: 96.56064 });
});

test("a unit typed beside the number is taken, whatever the field shows", () => {
  expect(read("46 1/2 in", "length")).toEqual({ ok: true, value: 1181.1 });
  expect(read("1.18 m", "length", "us")).toEqual({ ok: true, value: 1180 });
  expect(read("3° 30'", "angle")).toEqual({ ok: true, value: 3.5 });
});

test("a share is typed in hundredths, a rate over the length that is shown, and either may carry what stands beside the field", () => {
  expect(read("2.5", "share")).toEqual({ ok: true, value: 0.025 });
  expect(read("2,5 %", "share")).toEqual({ ok: true, value: 0.025 });
  expect(measureText(0.025, "share", "metric", ",")).toBe("2,5");
  expect(read("1.27", "pitch-rate", "us")).toEqual({ ok: true, value: 0.05 });
  expect(measureText(0.05, "pitch-rate", "us", ".")).toBe("1.27");
  expect(read("0.05 °/mm", "pitch-rate")).toEqual({ ok: true, value: 0.05 });
  expect(read("400 rad/s²", "angular-acceleration")).toEqual({ ok: true, value: 400 });
  expect(read("400 rpm", "angular-acceleration")).toMatchObject({ ok: false });
});

test("an empty field is no value, not nought", () => {
  expect(read("  ", "length")).toEqual({ ok: true, value: null });
});

test("what cannot be read says why", () => {
  expect(read("12 bananas", "length")).toMatchObject({
    ok: false,
    fault: { code: "unreadable", fault: { code: "quantity.unknown-unit" } },
  });
  expect(read("4.10 mm", "number")).toMatchObject({ ok: false, fault: { code: "unreadable" } });
  expect(read("3.5", "count")).toEqual({ ok: false, fault: { code: "not-whole" } });
  expect(read("0", "length", "metric", { above: 0 })).toEqual({ ok: false, fault: { code: "out-of-bounds", bounds: { above: 0 } } });
  expect(read("-1", "length", "metric", { minimum: 0 })).toMatchObject({ ok: false });
  expect(read("90", "angle", "metric", { below: 90 })).toMatchObject({ ok: false });
  expect(read("21", "length", "metric", { maximum: 20 })).toMatchObject({ ok: false });
});

/** Half of the last decimal shown: a thousandth of an inch, or a hundredth of a millimetre. */
const HALF_STEP_MM = { metric: 0.005, us: 0.0127 };
const ROUNDING_MM = 1e-6;

test("what a field shows reads back as the value, to the last digit shown", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.01, max: 20_000, noNaN: true }),
      fc.constantFrom<Units>("metric", "us"),
      fc.constantFrom<"." | ",">(".", ","),
      (value, units, sign) => {
        const back = read(measureText(value, "length", units, sign), "length", units);
        return back.ok && back.value !== null && Math.abs(back.value - value) <= HALF_STEP_MM[units] + ROUNDING_MM;
      },
    ),
    { seed: 1 },
  );
});

test("zeros at the end and a minus before nought are not shown", () => {
  expect(measureText(1180, "length", "metric", ".")).toBe("1180");
  expect(measureText(3.5, "angle", "metric", ",")).toBe("3,5");
  expect(measureText(-0.0001, "length", "metric", ".")).toBe("0");
});
