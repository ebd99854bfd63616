import { type Case, newCase, toPowertrain } from "@halfturn/casefile";
import { rotatingParts } from "@halfturn/engine/orders";
import { simulateRoadTest } from "@halfturn/engine/simulation";
import { toSi } from "@halfturn/engine/units";
import { type Channel, memoryRecording, writeCsv } from "@halfturn/recordings";
import { expect, test, vi } from "vitest";
import { listening } from "./listening.js";
import type { HearRequest, SpeedChoice } from "./listening-types.js";

/** A browser without private files. */
vi.stubGlobal("navigator", {});

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

const request = (speed: SpeedChoice): HearRequest => ({ document, speed, gear: "4", filter: null, stretch: null, language: "en" });
/** As the design promises. */
const STOP_MS = 100;
const quiet = (): void => undefined;

async function opened(seconds: number): Promise<void> {
  const look = await listening.open(await drive(seconds), []);
  expect(look).toMatchObject({ ok: true, value: { format: "csv", best: ["accel_z_ms2"], surestSpeed: "speed_mps" } });
  const read = await listening.read(["accel_z_ms2"], 1, quiet);
  expect(read).toMatchObject({ ok: true, value: { ids: ["accel_z_ms2"], gaps: { count: 0 } } });
  // 1e-6 of the rate: what the stamps' own digits leave open.
  if (read.ok) expect(Math.abs(read.value.rate / RATE - 1)).toBeLessThan(1e-6);
}

test("names the order whichever way the speed is known", async () => {
  await opened(30);
  const choices: readonly SpeedChoice[] = [
    { kind: "column", id: "speed_mps" },
    { kind: "constant", speed: toSi(85, "km/h") },
    { kind: "vibration", slowest: toSi(80, "km/h"), fastest: toSi(90, "km/h") },
  ];
  for (const [k, choice] of choices.entries()) {
    const shares: number[] = [];
    const answer = await listening.hear(request(choice), k + 2, (share) => shares.push(share));
    if (!answer.ok) throw new Error(`${choice.kind}: ${JSON.stringify(answer)}`);
    expect(answer.heard.json.verdict, choice.kind).toMatchObject({ part: "propeller-shaft", order: 2 });
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    // Each is drawn by the page: a hundred of them, however many pieces the work has.
    expect(shares.length).toBeLessThanOrEqual(100);
    // Gravity is no vibration: a tone of 1 m/s^2 beside noise of 0.2 m/s^2 RMS is most of what shakes.
    expect(answer.heard.json.unexplainedShare, choice.kind).toBeLessThan(0.2);
    const [least, , greatest] = answer.heard.wheelRate.map((rate) => rate * answer.heard.circumference);
    // Driven from 23.2 to 24 m/s; two per cent for blocks that are averaged and for a speed that was typed or followed.
    expect(Math.abs((least ?? 0) / 23.2 - 1)).toBeLessThan(0.02);
    expect(Math.abs((greatest ?? 0) / 24 - 1)).toBeLessThan(0.02);
  }
});

test("a stretch is listened to alone, and too short a one is refused in data", async () => {
  await opened(30);
  const column = request({ kind: "column", id: "speed_mps" });
  const part = await listening.hear({ ...column, stretch: [10, 20] }, 20, quiet);
  // A sample more or less at either end.
  expect(part.ok && Math.abs(part.heard.json.durationS - 10)).toBeLessThan(0.5);
  expect(await listening.hear({ ...column, stretch: [10, 10.05] }, 21, quiet)).toMatchObject({ ok: false, why: "signal" });
});

test("the views hold the largest sample and the shaft's line", async () => {
  await opened(30);
  const shape = await listening.envelope(0, 0, 30, 100);
  expect([shape?.low.length, shape?.high.length]).toEqual([100, 100]);
  expect(Math.max(...(shape?.high ?? []))).toBeGreaterThan(9.8 + 1);
  const seen = await listening.spectrum(0, 0, 30);
  if (!seen?.ok) throw new Error("no spectrum");
  const { amplitudes, lineSpacing } = seen.value;
  const top = amplitudes.indexOf(Math.max(...amplitudes)) * lineSpacing;
  // Twice 3.73 turns for each 2.4 m of road, from 23.2 to 24 m/s, a line to either side.
  expect(top).toBeGreaterThan((2 * 3.73 * 23.2) / 2.4 - lineSpacing);
  expect(top).toBeLessThan((2 * 3.73 * 24) / 2.4 + lineSpacing);
});

test("stops within a tenth of a second", async () => {
  await opened(120);
  const running = listening.hear(request({ kind: "column", id: "speed_mps" }), 40, quiet);
  await new Promise((resolve) => setTimeout(resolve, 30));
  const asked = performance.now();
  listening.stop(40);
  await expect(running).rejects.toMatchObject({ name: "AbortError" });
  expect(performance.now() - asked).toBeLessThan(STOP_MS);
});

test("once it is closed nothing of it can be asked, and what was being read is let go", async () => {
  await opened(30);
  const drawing = listening.envelope(0, 0, 30, 100);
  const reading = listening.read(["accel_z_ms2"], 50, quiet);
  const refused = expect(reading).rejects.toMatchObject({ name: "AbortError" });
  await listening.close();
  await refused;
  expect([await drawing, await listening.spectrum(0, 0, 30)]).toEqual([null, null]);
  await expect(listening.hear(request({ kind: "constant", speed: 23 }), 51, quiet)).rejects.toThrow("no channel was read");
});
