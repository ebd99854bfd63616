import { describe, expect, test } from "vitest";
import type { MetresPerSecond } from "../units/index.js";
import { coincidences } from "./coincidences.js";
import { circumferenceAsGiven, circumferenceOfSize } from "./rolling-circumference.js";
import { rotatingParts } from "./rotating-parts.js";
import { readTyreSize, type TyreSize } from "./tyre-size.js";

const kmh = (speed: number): MetresPerSecond => (speed / 3.6) as MetresPerSecond;
/** Tables print one decimal of a millimetre. */
const MILLIMETRE_DIGITS = 0.06;
/** Six decimals of turns per second. */
const RATE_DIGITS = 0.6e-6;

const tyre = (designation: string): TyreSize => {
  const read = readTyreSize(designation);
  if (!read.ok) throw new Error(read.code);
  return read.tyre;
};

describe("tyre sizes", () => {
  // Overall diameter (ETRTO, from memory; section height rounded to the millimetre) and 3.05 D in mm.
  test.each([
    ["315/80R22.5", 1076, 3281.8],
    ["295/80R22.5", 1044, 3184.2],
    ["315/70R22.5", 1014, 3092.7],
    ["225/75R16", 744, 2269.2],
  ])("%s is %i mm across and rolls %f mm a turn at 60 km/h", (designation, diameter, circumference) => {
    expect(Math.abs(tyre(designation).overallDiameter * 1000 - diameter)).toBeLessThan(MILLIMETRE_DIGITS);
    expect(Math.abs(circumferenceOfSize(tyre(designation), kmh(60)).value * 1000 - circumference)).toBeLessThan(MILLIMETRE_DIGITS);
  });
  // Free diameter of 265/70R17 in a public table: 31.6 in. The table prints one decimal and does not round the section height (185.5 mm), which we do.
  test("265/70R17 is 31.6 inches across", () => {
    expect(Math.abs((tyre("265/70R17").overallDiameter * 1000) / 25.4 - 31.6)).toBeLessThan(0.05 + 1.2 / 25.4);
  });
  test("a flotation size states its diameter: 35x12.50R17 is 889 mm", () => {
    expect(tyre("35x12.50R17LT").overallDiameter).toBe(0.889);
  });
  test("an aspect is rounded with its section before it counts twice", () => {
    // Without rounding the height first, 315/70R22.5 would come out 1 mm low.
    expect(tyre("315/70R22.5").overallDiameter).not.toBe(1.013);
  });
  test("marks before and behind the size are passed over, and what is no size is refused", () => {
    for (const same of ["LT265/70R17", "P265/70 R17", "265/70R17 121/118S", " 265/70r17 "]) expect(tyre(same)).toEqual(tyre("265/70R17"));
    for (const bad of ["", "265/70", "R17", "265-70-17x", "2650/70R17"])
      expect(readTyreSize(bad)).toEqual({ ok: false, code: "tyre.unreadable" });
    expect(readTyreSize("9R19.5")).toEqual({ ok: false, code: "tyre.not-in-table" });
    expect(tyre("11R22.5").from).toBe("table");
  });
  test("the belt grows with speed by a ten-thousandth per km/h", () => {
    expect(Math.abs(circumferenceOfSize(tyre("315/80R22.5"), kmh(110)).value / 3.2818 - 1.005)).toBeLessThan(1e-9);
  });
});

describe("what turns at 80 km/h with 3.2818 m a turn and an axle of 3.08", () => {
  // C-1: computed from f = v / CR and the ratios.
  const parts = rotatingParts(
    {
      circumference: circumferenceAsGiven(3.2818),
      axleRatio: 3.08,
      transferRatio: 1,
      gearRatio: 1,
      cylinders: 6,
      slip: 0,
      accessories: [{ id: "fan", ratio: 1.2 }],
    },
    kmh(80),
  );
  const rate = (name: string): number => parts.find(({ part }) => part === name)?.rate.value ?? NaN;
  test("wheel, shaft and engine", () => {
    expect(Math.abs(rate("wheel") - 6.771352)).toBeLessThan(RATE_DIGITS);
    expect(Math.abs(rate("propeller-shaft") - 20.855763)).toBeLessThan(RATE_DIGITS);
    expect(Math.abs(2 * rate("propeller-shaft") - 41.711527)).toBeLessThan(2 * RATE_DIGITS);
    expect(Math.abs(3 * rate("engine") - 62.56729)).toBeLessThan(3 * RATE_DIGITS);
    expect(Math.abs(rate("fan") - 1.2 * rate("engine"))).toBeLessThan(1e-12);
  });
  test("six cylinders fire three times a turn", () => {
    expect(parts.find(({ part }) => part === "engine")?.orders.find(({ cause }) => cause === "firing")?.order).toBe(3);
  });
  // C-2: the tyre's third order and the shaft's first are 0.08 wheel orders apart: 50 turns of the wheel with a Hann window, 164 m.
  test("the shaft's first order hides the tyre's third until 50 turns are recorded", () => {
    const found = coincidences(parts, 20).find(
      ({ first, second }) => first.part === "wheel" && first.order === 3 && second.part === "propeller-shaft" && second.order === 1,
    );
    expect(found?.wheelTurns).toBe(50);
    expect(found?.partedByGear).toBe(false);
    expect(Math.abs((found?.separation ?? NaN) - 0.08)).toBeLessThan(1e-12);
    expect(
      coincidences(parts, 51).some(({ first, second }) => first.order === 3 && second.part === "propeller-shaft" && second.order === 1),
    ).toBe(false);
  });
  test("in direct drive shaft and engine turn alike, which another gear would part", () => {
    const found = coincidences(parts, 1000).find(
      ({ first, second }) => first.part === "propeller-shaft" && first.order === 1 && second.part === "engine" && second.order === 1,
    );
    expect(found).toMatchObject({ wheelTurns: null, partedByGear: true });
  });
});

test("a slipping converter lets the engine run ahead by half its most, and widens what is known", () => {
  const base = {
    circumference: circumferenceAsGiven(2.4),
    axleRatio: 4,
    transferRatio: 2,
    gearRatio: 1.5,
    cylinders: null,
    accessories: [],
  };
  const firm = rotatingParts({ ...base, slip: 0 }, kmh(50));
  const slipping = rotatingParts({ ...base, slip: 0.06 }, kmh(50));
  const engine = (parts: typeof firm) => parts.find(({ part }) => part === "engine");
  expect(Math.abs((engine(slipping)?.rate.value ?? NaN) / (engine(firm)?.rate.value ?? NaN) - 1.03)).toBeLessThan(1e-12);
  expect(engine(slipping)?.rate.u ?? NaN).toBeGreaterThan(engine(firm)?.rate.u ?? NaN);
  expect(firm.map(({ part }) => part)).toEqual(["wheel", "propeller-shaft", "transfer-shaft", "engine"]);
  expect(engine(firm)?.orders.map(({ cause }) => cause)).toEqual(["misfire", "engine-unbalance"]);
});
