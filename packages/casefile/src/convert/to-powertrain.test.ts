import { circumferenceAsGiven, circumferenceOfSize, readTyreSize } from "@halfturn/engine/orders";
import { toSi } from "@halfturn/engine/units";
import { expect, test } from "vitest";
import { exampleCase } from "../example-cases.test-support.js";
import type { Case, CaseVehicle } from "../schema/case.js";
import { toPowertrain } from "./to-powertrain.js";

const speed = toSi(100, "km/h");
const twoPiece = exampleCase("two-piece");
const withVehicle = (change: Partial<CaseVehicle>, document: Case = twoPiece): Case => ({
  ...document,
  vehicle: { ...document.vehicle, ...change },
});
const without = (key: keyof CaseVehicle): Case => ({
  ...twoPiece,
  vehicle: Object.fromEntries(Object.entries(twoPiece.vehicle ?? {}).filter(([name]) => name !== key)),
});
const noComplaint = ({ complaint: _complaint, ...rest }: Case): Case => rest;

const good = (document: Case, gear?: string) => {
  const result = toPowertrain(document, { gear, speed });
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result;
};
const problems = (document: Case, gear?: string) => {
  const result = toPowertrain(document, { gear, speed });
  return result.ok ? [] : result.problems;
};

test("the ratios of the complaint's gear, and the circumference that was given rather than the size", () => {
  expect(good(twoPiece)).toEqual({
    ok: true,
    powertrain: {
      circumference: circumferenceAsGiven(2.42),
      axleRatio: 3.73,
      transferRatio: 1,
      gearRatio: 1,
      cylinders: 6,
      slip: 0,
      accessories: [],
    },
    gear: "4",
    notes: [],
  });
});

test("the size, at the speed asked about, where nothing was measured", () => {
  const read = readTyreSize("225/75R16");
  if (!read.ok) throw new Error(read.code);
  const { powertrain } = good(withVehicle({ tyre: { size: "225/75R16" } }));
  expect(powertrain.circumference).toEqual(circumferenceOfSize(read.tyre, speed));
});

test("a size that gives no circumference is refused with its reason", () => {
  const refusal = (size: string) => problems(withVehicle({ tyre: { size } }));
  const problem = (got: string, why: string) => [{ code: "unreadable-tyre", path: "vehicle.tyre.size", params: { got, why } }];
  expect(refusal("265-70")).toEqual(problem("265-70", "unreadable"));
  expect(refusal("9R19.5")).toEqual(problem("9R19.5", "not-in-table"));
  // Spelled as a size, but of a wheel with no width to roll on: it would turn without end.
  expect(refusal("00x12R17")).toEqual(problem("00x12R17", "unreadable"));
  expect(good(withVehicle({ tyre: { rollingCircumferenceMm: 2000, size: "whatever" } })).powertrain.circumference.value).toBe(2);
});

test("another gear by its label; a label that is not there is refused with those that are", () => {
  expect(good(twoPiece, "5")).toMatchObject({ gear: "5", powertrain: { gearRatio: 0.77 }, notes: [] });
  expect(problems(twoPiece, "9")).toEqual([
    {
      code: "unknown-reference",
      path: "vehicle.gears",
      params: { of: "gear", got: "9", allowed: ["1", "2", "3", "4", "5"] },
    },
  ]);
});

test("without a gear the only one is taken, else the direct one, else the engine stays out", () => {
  const silent = noComplaint(twoPiece);
  const gears = (...ratios: readonly number[]) =>
    good(withVehicle({ gears: ratios.map((ratio, k) => ({ label: `g${k}`, ratio })) }, silent));
  const taken = (gear: string, why: string) => [{ code: "gear-taken", path: "complaint.gear", params: { gear, why } }];
  expect(gears(2)).toMatchObject({ gear: "g0", powertrain: { gearRatio: 2 }, notes: taken("g0", "only") });
  expect(gears(2, 1)).toMatchObject({ gear: "g1", powertrain: { gearRatio: 1 }, notes: taken("g1", "direct") });
  for (const ratios of [[], [2, 3], [1, 1]]) {
    const unknown = [{ code: "gear-unknown", path: "vehicle.gears", params: { gears: ratios.map((_, k) => `g${k}`) } }];
    expect(gears(...ratios)).toMatchObject({ gear: null, powertrain: { gearRatio: null }, notes: unknown });
  }
});

test("a complaint's gear without a list of gears says nothing about the engine", () => {
  expect(good(without("gears"))).toMatchObject({ gear: null, powertrain: { gearRatio: null } });
});

test("axle ratio and tyre have to be there, and each that is not is named", () => {
  const missing = (key: string) => ({ code: "missing", path: `vehicle.${key}`, params: { key } });
  expect(problems(without("axleRatio"))).toEqual([missing("axleRatio")]);
  expect(problems(without("tyre"))).toEqual([missing("tyre")]);
  expect(problems({ ...twoPiece, vehicle: {} })).toEqual([missing("axleRatio"), missing("tyre")]);
});

test("a transfer ratio that is not given counts as 1, which is said where a second axle is driven", () => {
  const noTransfer = (name: string): Case => {
    const { transferRatio: _ratio, ...vehicle } = exampleCase(name).vehicle ?? {};
    return { ...exampleCase(name), vehicle };
  };
  const note = { code: "transfer-ratio-taken", path: "vehicle.transferRatio", params: {} };
  expect(good(noTransfer("two-piece"))).toMatchObject({ powertrain: { transferRatio: 1 }, notes: [] });
  expect(good(noTransfer("four-wheel-drive"))).toMatchObject({ powertrain: { transferRatio: 1 }, notes: [note] });
  expect(good(withVehicle({ transferRatio: 2.7 }, exampleCase("four-wheel-drive")))).toMatchObject({ powertrain: { transferRatio: 2.7 } });
});

test("slip, cylinders and accessories go through", () => {
  const accessories = [{ id: "fan", label: "Cooling fan", ratio: 1.2 }];
  const { powertrain } = good(withVehicle({ slipShare: 0.05, cylinders: 4, accessories }));
  expect(powertrain).toMatchObject({ slip: 0.05, cylinders: 4, accessories: [{ id: "fan", ratio: 1.2 }] });
});
