import { type Case, newCase, toPowertrain } from "@halfturn/casefile";
import { rotatingParts } from "@halfturn/engine/orders";
import { simulateRoadTest } from "@halfturn/engine/simulation";
import { toSi } from "@halfturn/engine/units";
import { type Channel, memoryRecording, writeCsv } from "@halfturn/recordings";
import { expect } from "vitest";
import { listening } from "./listening.js";
import type { HearRequest, SpeedChoice } from "./listening-types.js";

const RATE = 300;
const CIRCUMFERENCE_MM = 2400;
const document: Case = {
  ...newCase({ id: "road", title: "Road", layout: "one-piece", createdAt: "2026-05-04T07:30:00Z" }),
  vehicle: { axleRatio: 3.73, tyre: { rollingCircumferenceMm: CIRCUMFERENCE_MM }, cylinders: 4, gears: [{ label: "4", ratio: 1.27 }] },
};

const channel = (id: string, quantity: Channel["quantity"]): Channel => ({ id, name: id, unit: null, quantity, fullScale: null });

/** A drive near 85 km/h on which the propeller shaft's second order shakes, as a table. */
async function drive(seconds: number): Promise<Blob> {
  const found = toPowertrain(document, { speed: toSi(85, "km/h") });
  if (!found.ok) throw new Error("the case lacks what turns");
  const made = simulateRoadTest({
    seed: 3,
    parts: rotatingParts(found.powertrain, toSi(85, "km/h")),
    circumference: CIRCUMFERENCE_MM / 1000,
    profile: { times: [0, seconds / 2, seconds], speeds: [23.2, 24, 23.4] },
    sources: [{ kind: "harmonic", part: "propeller-shaft", order: 2, amplitude: 1, speedPower: 0, phase: 0.4, gains: [1] }],
    referenceSpeed: 23.5,
    roadNoise: 0.2,
    noiseColour: "white",
    resonance: null,
    // Gravity lies on the axis, as on that of a phone.
    sensor: { rate: RATE, filter: null, noise: 0.01, offset: 9.8, drift: 0, fullScale: null, resolution: 0 },
    axes: 1,
    log: { interval: 0.5, lag: 0, resolution: 0, scale: 0, noise: 0.02 },
    tachometer: null,
  });
  if (!made.ok || !made.value.log) throw new Error("no drive");
  const [axis] = made.value.channels;
  const { times, speeds } = made.value.log;
  const samples = axis?.samples ?? new Float64Array(0);
  const recording = memoryRecording([
    {
      channels: [channel("accel_z", "acceleration")],
      clock: { kind: "even", start: 0, rate: RATE, count: samples.length },
      times: null,
      values: [samples],
    },
    { channels: [channel("speed", "velocity")], clock: { kind: "stamped", count: times.length }, times, values: [speeds] },
  ]);
  const parts: BlobPart[] = [];
  for await (const part of writeCsv(recording, { separator: ",", decimal: "." }))
    if (part.ok) parts.push(part.value as Uint8Array<ArrayBuffer>);
  return new Blob(parts);
}

export const request = (speed: SpeedChoice): HearRequest => ({ document, speed, gear: "4", filter: null, stretch: null, language: "en" });
export const quiet = (): void => undefined;

/** Opens such a drive and reads its channel. */
export async function opened(seconds: number): Promise<void> {
  const look = await listening.open(await drive(seconds), []);
  expect(look).toMatchObject({ ok: true, value: { format: "csv", best: ["accel_z_ms2"], surestSpeed: "speed_mps" } });
  const read = await listening.read(["accel_z_ms2"], 1, quiet);
  expect(read).toMatchObject({ ok: true, value: { ids: ["accel_z_ms2"], gaps: { count: 0 } } });
  // 1e-6 of the rate: what the stamps' own digits leave open.
  if (read.ok) expect(Math.abs(read.value.rate / RATE - 1)).toBeLessThan(1e-6);
}
