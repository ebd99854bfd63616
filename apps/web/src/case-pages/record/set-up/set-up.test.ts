import { expect, test } from "vitest";
import type { Look } from "../../../worker/listening/listening-types.js";
import { fitsFile, isScales, isSetUp, type SetUp } from "./set-up.js";

const setUp: SetUp = {
  form: { from: "column", channel: "speed_kmh", part: "propeller-shaft", perTurn: 1, speed: null, slowest: 70, fastest: 90 },
  gear: "4",
  filter: null,
};
const look: Look = { format: "csv", channels: [], best: [], surestSpeed: null, notes: [] };
const speed = {
  id: "speed_kmh",
  name: "speed",
  unit: null,
  quantity: "velocity",
  fullScale: null,
  heard: false,
  speed: "road-speed",
} as const;

test("what was filled in is read back as it was written, and nothing else is", () => {
  expect(isSetUp(JSON.parse(JSON.stringify(setUp)))).toBe(true);
  expect(isSetUp({ ...setUp, form: { ...setUp.form, from: "satellite" } })).toBe(false);
  expect(isSetUp({ ...setUp, gear: 4 })).toBe(false);
  expect(isSetUp({ ...setUp, form: null })).toBe(false);
  expect(isScales([{ id: "ai3", unit: "m/s2" }])).toBe(true);
  expect(isScales([{ unit: "m/s2" }])).toBe(false);
});

test("a column that the file does not have is not asked for", () => {
  expect(fitsFile(setUp, { ...look, channels: [speed] })).toBe(true);
  expect(fitsFile(setUp, look)).toBe(false);
  expect(fitsFile({ ...setUp, form: { ...setUp.form, channel: null } }, look)).toBe(true);
});
