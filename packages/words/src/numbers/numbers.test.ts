import { describe, expect, it } from "vitest";
import { numbersOf } from "./numbers.js";

const en = numbersOf("en");
const es = numbersOf("es");

describe("numbers", () => {
  it("shows an angle as gauged with one decimal, or with those it has", () => {
    expect([en.gaugedAngle(2), en.gaugedAngle(1.8), en.gaugedAngle(1.85)]).toEqual(["2.0°", "1.8°", "1.85°"]);
  });

  it("shows results with two decimals and the unit", () => {
    expect(en.angle(2.8284)).toBe("2.83°");
    expect(en.angleWithin(2.8284, 0.174)).toBe("2.83° ± 0.17°");
    expect(en.angleInterval(0, 0.4)).toBe("0.00° to 0.40°");
  });

  it("gives an uncertainty two significant digits", () => {
    expect([en.uncertainty(0.04321), en.uncertainty(0.1), en.uncertainty(12.3)]).toEqual(["0.043", "0.10", "12"]);
  });

  it("never writes a signed zero", () => {
    expect(en.angle(-0.0001)).toBe("0.00°");
    expect(es.angle(-0.0001)).toBe("0,00°");
    expect(en.angle(-0.01)).toBe("-0.01°");
  });

  it("writes accelerations as whole numbers, one decimal below ten", () => {
    expect([en.acceleration(312.4), en.acceleration(3.14), en.bareAccelerationInterval(3.14, 312.4)]).toEqual([
      "312 rad/s²",
      "3.1 rad/s²",
      "3 to 312",
    ]);
  });

  it("groups from five digits on only, as in a shaft speed", () => {
    expect([en.speed(3600), en.speed(12000)]).toEqual(["3600 rpm", "12,000 rpm"]);
  });

  it("takes decimal sign and joining words from the language", () => {
    expect([es.angle(2.5), es.angleInterval(1, 2), es.share(0.62)]).toEqual(["2,50°", "1,00° a 2,00°", "62 %"]);
    expect([en.all(["a", "b", "c"]), es.all(["a", "b"]), es.any(["a", "b"])]).toEqual(["a, b, and c", "a y b", "a o b"]);
  });
});
