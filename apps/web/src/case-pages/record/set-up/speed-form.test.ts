import { expect, test } from "vitest";
import type { Look, LookedChannel } from "../../../worker/listening/listening-types.js";
import { firstSpeedForm, speedChoice, withChannel } from "./speed-form.js";

const channel = (id: string, quantity: LookedChannel["quantity"], speed: LookedChannel["speed"]): LookedChannel => ({
  id,
  name: id.replace(/_kmh$/, ""),
  unit: null,
  quantity,
  fullScale: null,
  heard: quantity === "acceleration",
  speed,
});
const look = (channels: readonly LookedChannel[], surestSpeed: string | null): Look => ({
  format: "csv",
  channels,
  best: [],
  surestSpeed,
  notes: [],
});
const SPEED = channel("speed_kmh", "velocity", "road-speed");
const TACHO = channel("tacho_transfer_shaft", "pulses", "pulses");
const RAW = channel("ai3", "voltage", null);

test("the surest column of the file comes first, and a tachometer goes by its name", () => {
  expect(speedChoice(firstSpeedForm(look([SPEED], "speed_kmh"), [80, 90], 1))).toEqual({ kind: "column", id: "speed_kmh" });
  expect(speedChoice(firstSpeedForm(look([TACHO, SPEED], TACHO.id), undefined, 4))).toEqual({
    kind: "tachometer",
    id: "tacho_transfer_shaft",
    part: "transfer-shaft",
    perTurn: 4,
  });
});

test("without a column the speed of the complaint is taken, in m/s", () => {
  expect(speedChoice(firstSpeedForm(look([RAW], null), [72, 108], 1))).toEqual({ kind: "constant", speed: 25 });
  expect(speedChoice(firstSpeedForm(look([RAW], null), undefined, 1))).toBe(null);
});

test("any signal can be a tachometer's; a range from the vibration has to rise", () => {
  const form = firstSpeedForm(look([RAW], null), [80, 90], 2);
  expect(speedChoice(withChannel(form, RAW))).toEqual({ kind: "tachometer", id: "ai3", part: "propeller-shaft", perTurn: 2 });
  expect(speedChoice({ ...withChannel(form, RAW), perTurn: null })).toBe(null);
  expect(speedChoice({ ...form, from: "vibration", slowest: 36, fastest: 72 })).toMatchObject({
    kind: "vibration",
    slowest: 10,
    fastest: 20,
    order: 1,
  });
  expect(speedChoice({ ...form, from: "vibration", slowest: 90, fastest: 90 })).toBe(null);
});
