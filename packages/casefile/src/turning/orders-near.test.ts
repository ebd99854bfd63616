import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { restore } from "../restore/restore.js";
import { ordersNear } from "./orders-near.js";
import { turningAt } from "./turning-at.js";

const example = restore(readFileSync(new URL("../../examples/two-piece.halfturn.json", import.meta.url), "utf8"));
const turning = example.ok ? turningAt(example.case, { speed: 100, gear: "5" }) : null;
if (!turning?.ok) throw new Error("the example lacks what turns");
const { json } = turning;
const shaft = json.parts.find(({ part }) => part === "propeller-shaft")?.turnsPerSecond?.value ?? 0;

test("names what turns at a frequency, nearest first", () => {
  const near = ordersNear(json, { frequency: shaft + 0.1, within: 0.3, speedShare: 0.01 });
  expect(near[0]).toMatchObject({ part: "propeller-shaft", order: 1, frequency: shaft });
  const distances = near.map(({ apart }) => Math.abs(apart));
  expect(distances).toEqual(distances.toSorted((a, b) => a - b));
});

test("names nothing where nothing turns", () => {
  const highest = Math.max(...json.parts.flatMap(({ orders }) => orders.map(({ frequencyHz }) => frequencyHz?.interval95[1] ?? 0)));
  expect(ordersNear(json, { frequency: highest * 2, within: 0.5, speedShare: 0.02 })).toEqual([]);
});

test("a speed known less well leaves room for more", () => {
  const asked = { frequency: shaft * 1.06, within: 0 };
  const holds = (speedShare: number): boolean =>
    ordersNear(json, { ...asked, speedShare }).some(({ part, order }) => part === "propeller-shaft" && order === 1);
  expect([holds(0), holds(0.1)]).toEqual([false, true]);
});
