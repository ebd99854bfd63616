import fc from "fast-check";
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
      "312\u00a0rad/s²",
      "3.1\u00a0rad/s²",
      "3 to 312",
    ]);
  });

  it("groups from five digits on only, as in a shaft speed", () => {
    expect([en.speed(3600), en.speed(12000)]).toEqual(["3600\u00a0rpm", "12,000\u00a0rpm"]);
  });

  it("takes decimal sign and joining words from the language", () => {
    expect([es.angle(2.5), es.angleInterval(1, 2), es.share(0.62)]).toEqual(["2,50°", "1,00° a 2,00°", "62\u00a0%"]);
    expect([en.all(["a", "b", "c"]), es.all(["a", "b"]), es.any(["a", "b"])]).toEqual(["a, b, and c", "a y b", "a o b"]);
  });
});

describe("numbers in US units", () => {
  const us = numbersOf("en", "us");
  const usSpanish = numbersOf("es", "us");

  it("show a small length as a caliper does and a long one as a tape does", () => {
    expect([us.length(6), us.length(25.4), us.length(1180), us.length(12.7), us.length(0)]).toEqual([
      "0.236\u00a0in",
      "1\u00a0in",
      "46.46\u00a0in",
      "0.5\u00a0in",
      "0\u00a0in",
    ]);
    expect([us.evenLength(12.7), us.evenLength(-5), us.evenLengthInterval(-1, 3)]).toEqual([
      "0.500\u00a0in",
      "-0.197\u00a0in",
      "-0.039 to 0.118\u00a0in",
    ]);
    expect(usSpanish.evenLengthInterval(-1, 3)).toBe("-0,039 a 0,118\u00a0in");
  });

  it("keep the millimetres beside a part that is stocked in them, and only beside such a part", () => {
    expect([us.partSize(6), us.partSize(6.35), us.partSize(1.5875), us.partSize(5.08), us.partSize(12.36)]).toEqual([
      "0.236\u00a0in (6\u00a0mm)",
      "0.25\u00a0in",
      "0.0625\u00a0in",
      "0.2\u00a0in",
      "0.487\u00a0in (12.36\u00a0mm)",
    ]);
    expect(numbersOf("en").partSize(6)).toBe("6\u00a0mm");
  });

  it("say every sixteenth of an inch so that it is that one again when it is typed", () => {
    for (let sixteenths = 1; sixteenths <= 32; sixteenths++) {
      const millimetres = (sixteenths * 25.4) / 16;
      expect(us.partSize(millimetres)).toBe(`${sixteenths / 16}\u00a0in`);
    }
  });

  it("show road speeds in miles an hour, whole where they were meant whole, and distances in feet", () => {
    const meant = 65 * 1.609344;
    expect([us.roadSpeed(meant), us.roadSpeed(105), us.bareRoadSpeed(105, 0), us.distance(100)]).toEqual([
      "65\u00a0mph",
      "65.2\u00a0mph",
      "65",
      "328\u00a0ft",
    ]);
    expect([en.roadSpeed(105), en.roadSpeed(104.6), en.bareRoadSpeed(104.6, 0), en.distance(164.09)]).toEqual([
      "105\u00a0km/h",
      "104.6\u00a0km/h",
      "105",
      "164\u00a0m",
    ]);
    expect([85, 84.5].map((kmh) => en.roadSpeed(kmh))).toEqual(["85\u00a0km/h", "84.5\u00a0km/h"]);
    expect(us.roadSpeed(85)).toBe("52.8\u00a0mph");
    expect([en.roadSpeed(74.4, 0), us.roadSpeed(74.4, 0)]).toEqual(["74\u00a0km/h", "46\u00a0mph"]);
  });

  it("round a road speed once, and write no nought behind one that rounds to a whole number", () => {
    // 44.47 miles an hour: by way of 44.5 it would be 45.
    expect(us.roadSpeed(44.47 * 1.609344, 0)).toBe("44\u00a0mph");
    expect([en.roadSpeed(64.97), us.roadSpeed(64.97 * 1.609344)]).toEqual(["65\u00a0km/h", "65\u00a0mph"]);
  });

  it("give two speeds of one sentence the same decimals", () => {
    expect([us.roadSpeeds(90, 115), us.roadSpeeds(56 * 1.609344, 115)]).toEqual([
      ["55.9", "71.5\u00a0mph"],
      ["56.0", "71.5\u00a0mph"],
    ]);
    expect([en.roadSpeeds(80, 90), en.roadSpeeds(80.5, 90)]).toEqual([
      ["80", "90\u00a0km/h"],
      ["80.5", "90.0\u00a0km/h"],
    ]);
  });

  it("leave angles, shaft speeds and accelerations as they are", () => {
    expect([us.angle(2.5), us.speed(3600), us.acceleration(312)]).toEqual([en.angle(2.5), en.speed(3600), en.acceleration(312)]);
  });

  it("never differ from the metric length by more than half of the last digit shown", () => {
    const HALF_A_HUNDREDTH_OF_AN_INCH_MM = 0.127;
    const ROUNDING_MM = 1e-9;
    fc.assert(
      fc.property(fc.double({ min: -3000, max: 3000, noNaN: true }), (millimetres) => {
        const shown = Number(us.length(millimetres).replace(/\u00a0in$/, "")) * 25.4;
        return Math.abs(shown - millimetres) <= HALF_A_HUNDREDTH_OF_AN_INCH_MM + ROUNDING_MM;
      }),
    );
  });
});
