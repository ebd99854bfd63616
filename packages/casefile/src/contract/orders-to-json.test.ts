import { circumferenceAsGiven, type Powertrain } from "@halfturn/engine/orders";
import { expect, test } from "vitest";
import { ordersToJson } from "./orders-to-json.js";

const powertrain: Powertrain = {
  circumference: circumferenceAsGiven(2.5),
  axleRatio: 4,
  transferRatio: 1,
  gearRatio: null,
  cylinders: 6,
  slip: 0,
  accessories: [],
};
const U_SHARE = 0.01 / Math.sqrt(3);
/** Products of a few doubles, in another order than inside. */
const ROUNDING = 1e-12;

const asked = (change: Partial<Powertrain>, wheelTurns = 1) => ordersToJson({ ...powertrain, ...change }, { speedKmh: 90, wheelTurns });

test("the printed contract, key by key and in order", () => {
  const json = asked({});
  expect(Object.keys(json)).toEqual(["format", "version", "speedKmh", "parts", "coincidences"]);
  expect(json).toMatchObject({ format: "halfturn-orders", version: 1, speedKmh: 90 });
  const [wheel, shaft, ...more] = json.parts;
  expect(more).toEqual([]);
  // 90 km/h is 25 m/s: ten turns of 2.5 m a second, and four times as many of the shaft.
  expect(Object.keys(wheel ?? {})).toEqual(["part", "turnsPerSecond", "orders"]);
  expect(wheel?.turnsPerSecond?.value).toBe(10);
  expect(shaft?.turnsPerSecond?.value).toBe(40);
  expect(Math.abs((shaft?.turnsPerSecond?.u ?? NaN) - 40 * U_SHARE)).toBeLessThan(ROUNDING);
  expect(shaft?.orders.map(({ order, frequencyHz, cause }) => [order, frequencyHz?.value, cause])).toEqual([
    [1, 40, "shaft-unbalance-or-runout"],
    [2, 80, "joint-angles"],
    [4, 160, "joint-angles-higher"],
  ]);
  expect(Object.keys(shaft?.orders[1] ?? {})).toEqual(["order", "frequencyHz", "cause"]);
  const { value, u, interval95 } = shaft?.orders[1]?.frequencyHz ?? { value: NaN, u: NaN, interval95: [NaN, NaN] };
  expect(Math.abs(u - 80 * U_SHARE)).toBeLessThan(ROUNDING);
  expect(interval95.map((edge) => Math.abs(Math.abs(edge / value - 1) - 0.0095) < ROUNDING)).toEqual([true, true]);
});

test("a coincidence says how far apart, and what parts the two", () => {
  const json = asked({ axleRatio: 3.08 }, 20);
  expect(json.coincidences).toHaveLength(1);
  const [found] = json.coincidences;
  expect(Object.keys(found ?? {})).toEqual(["first", "second", "separationWheelOrders", "wheelTurns", "distanceM", "partedByGear"]);
  expect(found).toMatchObject({
    first: { part: "wheel", order: 3 },
    second: { part: "propeller-shaft", order: 1 },
    wheelTurns: 50,
    distanceM: 125,
    partedByGear: false,
  });
  expect(Math.abs((found?.separationWheelOrders ?? NaN) - 0.08)).toBeLessThan(ROUNDING);
  expect(asked({ axleRatio: 3.08 }, 51).coincidences).toEqual([]);
});

test("orders that coincide exactly have no length that parts them, and JSON says so with null", () => {
  const direct = asked({ gearRatio: 1 }, 1000).coincidences.find(({ second }) => second.part === "engine" && second.order === 1);
  expect(direct).toMatchObject({ separationWheelOrders: 0, wheelTurns: null, distanceM: null, partedByGear: true });
  expect(JSON.parse(JSON.stringify(direct))).toEqual(direct);
});
