import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildProgram, type Program } from "./program.test-support.js";

let program: Program;
beforeAll(async () => {
  program = await buildProgram();
  program.example("two-piece", "case.json");
  program.broken("near.json", ({ vehicle }) => {
    Object.assign(vehicle, { axleRatio: 3.08, tyre: { rollingCircumferenceMm: 3281.8 }, slipShare: 0.04 });
    vehicle.accessories = [{ id: "fan", label: "Cooling fan", ratio: 1.25 }];
  });
  program.broken("no-gear.json", (document) => {
    delete document.complaint;
    document.vehicle.gears = document.vehicle.gears.filter(({ ratio }: { ratio: number }) => ratio !== 1);
  });
  program.broken("no-tyre.json", ({ vehicle }) => delete vehicle.tyre);
  program.broken("bare.json", (document) => delete document.vehicle);
  program.broken("tyre.json", ({ vehicle }) => Object.assign(vehicle, { tyre: { size: "265-70" } }));
}, 60_000);
afterAll(() => program.remove());

const json = async (...args: string[]) => {
  const { code, out } = await program.run(["orders", "--json", ...args]);
  expect(code).toBe(0);
  return JSON.parse(out);
};
type Part = { readonly part: string; readonly turnsPerSecond: { readonly value: number } };
const rate = ({ parts }: { readonly parts: readonly Part[] }, name: string) =>
  parts.find(({ part }) => part === name)?.turnsPerSecond.value ?? Number.NaN;
/** A ratio of two products of a few doubles. */
const ROUNDING = 1e-12;

describe("orders --json", () => {
  it("prints the contract and nothing else, the same bytes in every language", async () => {
    const first = await program.run(["orders", "case.json", "--speed", "105", "--json"]);
    expect([first.code, first.err]).toEqual([0, ""]);
    const printed = JSON.parse(first.out);
    expect(Object.keys(printed)).toEqual(["format", "version", "speedKmh", "parts", "coincidences"]);
    expect(printed).toMatchObject({ format: "halfturn-orders", version: 1, speedKmh: 105 });
    expect(printed.parts.map(({ part }: Part) => part)).toEqual(["wheel", "propeller-shaft", "engine"]);
    const spanish = await program.run(["orders", "case.json", "--speed", "105", "--json", "--lang", "es"], { env: { FORCE_COLOR: "1" } });
    expect(spanish).toEqual(first);
  });

  it("turns the wheel by speed over circumference, the shaft by the axle ratio and the engine by the gear", async () => {
    const printed = await json("case.json", "--speed", "105", "--gear", "5");
    expect(Math.abs(rate(printed, "wheel") / (105 / 3.6 / 2.42) - 1)).toBeLessThan(ROUNDING);
    expect(Math.abs(rate(printed, "propeller-shaft") / rate(printed, "wheel") / 3.73 - 1)).toBeLessThan(ROUNDING);
    expect(Math.abs(rate(printed, "engine") / rate(printed, "propeller-shaft") / 0.77 - 1)).toBeLessThan(ROUNDING);
  });

  it("takes miles an hour, and a comma for the decimal sign", async () => {
    const miles = await json("case.json", "--speed", "65mph");
    expect(Math.abs(miles.speedKmh / (65 * 1.609344) - 1)).toBeLessThan(ROUNDING);
    expect((await json("case.json", "--speed", "88,5 km/h")).speedKmh).toBe(88.5);
    expect((await json("case.json", "--speed", "1")).speedKmh).toBe(1);
    expect((await json("case.json", "--speed", "300")).speedKmh).toBe(300);
  });

  it("names what a recording of so many turns cannot part", async () => {
    const wheelThird = async (...flags: string[]) =>
      (await json("near.json", "--speed", "80", ...flags)).coincidences.filter(
        ({ first, second }: { first: { order: number }; second: { part: string } }) =>
          first.order === 3 && second.part === "propeller-shaft",
      );
    expect(await wheelThird("--turns", "20")).toMatchObject([{ second: { order: 1 }, wheelTurns: 50, partedByGear: false }]);
    expect(await wheelThird("--turns", "51")).toEqual([]);
  });

  it("keeps notes off the output", async () => {
    const { code, out, err } = await program.run(["orders", "no-gear.json", "--speed", "80", "--json"]);
    expect(code).toBe(0);
    expect(JSON.parse(out).parts.map(({ part }: Part) => part)).toEqual(["wheel", "propeller-shaft"]);
    expect(err).toBe("The engine and what it drives are left out: the gear is not known. Name one of 1, 2, 3, or 5.\n");
  });
});

describe("orders for people", () => {
  it("shows rates, orders with their causes, the complaint's reach and what lies too close", async () => {
    const { code, out, err } = await program.run(["orders", "case.json", "--speed", "85"]);
    expect([code, err]).toEqual([0, ""]);
    expect(out).toMatch(/^Turning at 85 km\/h in gear 4$/m);
    expect(out).toMatch(/^ {2}Propeller shaft +36\.39 ± 0\.35 +2184 ± 21$/m);
    expect(out).toMatch(/^ +2 +72\.78 ± 0\.69 +68\.5 to 77\.1 +joint angles$/m);
    expect(out).toContain("85 km/h lies within the complaint, 80 to 90 km/h.");
    expect(out).toMatch(/^ {2}In a recording of 98 turns of the wheel at steady speed \(10 s, 237 m/m);
    expect(out).toContain("The engine's first order is the same as the propeller shaft's first order");
    expect((await program.run(["orders", "case.json", "--speed", "105"])).out).toContain("105 km/h lies outside the complaint");
  });

  it("calls an accessory by its label and says how the shaft's first order is told from the wheel's third", async () => {
    const { out } = await program.run(["orders", "near.json", "--speed", "80", "--turns", "20"]);
    expect(out).toMatch(/^ {2}Cooling fan +\d/m);
    expect(out.replaceAll(/\s+/g, " ")).toContain(
      "The propeller shaft's first order lies 0.08 of a wheel order from the wheel's third order: only 50 turns of the wheel at steady speed, 164 m, part them.",
    );
  });

  it.each(["en", "es"])("fits 80 columns in %s", async (lang) => {
    for (const file of ["case.json", "near.json", "no-gear.json"]) {
      const { out } = await program.run(["orders", file, "--speed", "105", "--lang", lang]);
      expect(out.split("\n").filter((line) => [...line].length > 80)).toEqual([]);
    }
  });
});

describe("orders that cannot be told", () => {
  it.each([
    ["a standstill", ["case.json", "--speed", "0"], '--speed: "0" is not a road speed from 1 to 300 km/h; write one such as 105 or 65mph'],
    ["beyond any road", ["case.json", "--speed", "190mph"], '--speed: "190mph" is not a road speed from 1 to 300 km/h; write one such as'],
    ["a speed of the shaft", ["case.json", "--speed", "3000rpm"], '--speed: "3000rpm" is not a road speed'],
    ["no speed", ["case.json"], "--speed needs a value: write --speed VALUE"],
    ["no turns", ["case.json", "--speed", "80", "--turns", "0"], '--turns: "0" is not a whole number from 1 to 10,000,000; write one'],
    ["another gear", ["case.json", "--speed", "80", "--gear", "9"], '--gear: there is no gear "9" in this case; write 1, 2, 3, 4, or 5'],
    ["no tyre size", ["tyre.json", "--speed", "80"], 'tyre.json: vehicle.tyre.size: "265-70" cannot be read as a tyre size; write it as'],
  ])("%s: one line, exit 2", async (_, args, line) => {
    const { code, out, err } = await program.run(["orders", ...args]);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toMatch(/^[^\n]+\n$/);
    expect(err.startsWith(line)).toBe(true);
  });

  it("names the remedy beside an unreadable size", async () => {
    expect((await program.run(["orders", "tyre.json", "--speed", "80"])).err).toContain('give "rollingCircumferenceMm"');
  });

  it("exits 1 where the case says too little, a line for each thing that is missing", async () => {
    expect(await program.run(["orders", "no-tyre.json", "--speed", "80"])).toEqual({
      code: 1,
      out: "",
      err: "no-tyre.json: vehicle.tyre: is missing; add it\n",
    });
    const bare = await program.run(["orders", "bare.json", "--speed", "80", "--json"]);
    expect([bare.code, bare.out, bare.err.split("\n").length]).toEqual([1, "", 3]);
  });
});
