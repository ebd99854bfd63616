import { type Case, newCase } from "@halfturn/casefile";
import { expect, test } from "vitest";
import type { Look, LookedChannel } from "../../../worker/listening/listening-types.js";
import { firstSpeedForm, speedChoice, speedFromText, withChannel } from "./speed-form.js";

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
const felt = (speedKmh?: [number, number]): Case => ({
  ...newCase({ id: "road", title: "Road", layout: "two-piece", createdAt: "2026-05-04T07:30:00Z" }),
  ...(speedKmh ? { complaint: { speedKmh } } : {}),
});
const SPEED = channel("speed_kmh", "velocity", "road-speed");
const TACHO = channel("tacho_transfer_shaft", "pulses", "pulses");
const RAW = channel("ai3", "voltage", null);

test("the surest column of the file comes first, and a tachometer goes by its name", () => {
  expect(speedChoice(firstSpeedForm(look([SPEED], "speed_kmh"), felt([80, 90]), 1))).toEqual({ kind: "column", id: "speed_kmh" });
  expect(speedChoice(firstSpeedForm(look([TACHO, SPEED], TACHO.id), felt(), 4))).toEqual({
    kind: "tachometer",
    id: "tacho_transfer_shaft",
    part: "transfer-shaft",
    perTurn: 4,
  });
});

test("without a column the speed of the complaint is taken, in m/s", () => {
  expect(speedChoice(firstSpeedForm(look([RAW], null), felt([72, 108]), 1))).toEqual({ kind: "constant", speed: 25 });
  expect(speedChoice(firstSpeedForm(look([RAW], null), felt(), 1))).toBe(null);
});

test("any signal can be a tachometer's; a range from the vibration has to rise", () => {
  const form = firstSpeedForm(look([RAW], null), felt([80, 90]), 2);
  expect(speedChoice(withChannel(form, RAW))).toEqual({ kind: "tachometer", id: "ai3", part: "propeller-shaft", perTurn: 2 });
  expect(speedChoice({ ...withChannel(form, RAW), perTurn: null })).toBe(null);
  expect(speedChoice({ ...form, from: "vibration", slowest: 36, fastest: 72 })).toMatchObject({
    kind: "vibration",
    slowest: 10,
    fastest: 20,
  });
  expect(speedChoice({ ...form, from: "vibration", slowest: 90, fastest: 90 })).toBe(null);
});

test("the case keeps where the speed came from", () => {
  const write = (kmh: number): string => `${kmh} km/h`;
  const typed = firstSpeedForm(look([RAW], null), felt([80, 90]), 1);
  expect(speedFromText(typed, write)).toBe("85 km/h");
  expect(speedFromText(withChannel(typed, SPEED), write)).toBe("speed_kmh");
  expect(speedFromText({ ...typed, from: "vibration" }, write)).toBe("vibration");
});
