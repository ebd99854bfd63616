import { readFileSync, writeFileSync } from "node:fs";
import { restore, toPowertrain } from "@halfturn/casefile";
import { rotatingParts } from "@halfturn/engine/orders";
import { type RoadTest, type RoadTestRecording, simulateRoadTest } from "@halfturn/engine/simulation";
import { toSi } from "@halfturn/engine/units";
import { type Channel, type MemoryTrack, memoryRecording, type Recording, type RecordingResult } from "@halfturn/recordings";

const RATE = 500;
const CIRCUMFERENCE = 2.42;

/** A drive of the two-piece example in gear 5 through its complaint: the propeller shaft's first order shakes with 1 m/s^2, the wheel's with 0.2. */
export function drive(change: Partial<RoadTest> = {}): RoadTestRecording {
  const example = restore(readFileSync(new URL("../../../packages/casefile/examples/two-piece.halfturn.json", import.meta.url), "utf8"));
  if (!example.ok) throw new Error("the example is no case");
  const found = toPowertrain(example.case, { gear: "5", speed: toSi(85, "km/h") });
  if (!found.ok) throw new Error("the example lacks what turns");
  const shake = { kind: "harmonic", speedPower: 0, phase: 0.4, gains: [0.3, 1] } as const;
  const made = simulateRoadTest({
    seed: 7,
    parts: rotatingParts(found.powertrain, toSi(85, "km/h")),
    circumference: CIRCUMFERENCE,
    profile: { times: [0, 20, 40], speeds: [20, 26, 22] },
    sources: [
      { ...shake, part: "propeller-shaft", order: 1, amplitude: 1 },
      { ...shake, part: "wheel", order: 1, amplitude: 0.2 },
    ],
    referenceSpeed: 23,
    roadNoise: 0.3,
    noiseColour: "white",
    resonance: null,
    sensor: { rate: RATE, filter: null, noise: 0.01, offset: 0.1, drift: 0, fullScale: null, resolution: 0 },
    axes: 2,
    log: { interval: 0.5, lag: 0, resolution: 0, scale: 0, noise: 0.02 },
    tachometer: { part: "propeller-shaft", perTurn: 1, jitter: 0 },
    ...change,
  });
  if (!made.ok) throw new Error(made.code);
  return made.value;
}

const channel = (name: string, quantity: Channel["quantity"]): Channel => ({ id: name, name, unit: null, quantity, fullScale: null });

/** What the drive left in one recording: two axes and a mark on the shaft on one clock, the speed on its own. */
export function recordingOf({ channels, log, pulses }: RoadTestRecording): Recording {
  const [x, z] = channels as unknown as readonly [RoadTestRecording["channels"][number], RoadTestRecording["channels"][number]];
  const clock = { kind: "even", start: x.start, rate: x.rate, count: x.samples.length } as const;
  const vibration: MemoryTrack = {
    channels: [channel("accel_x", "acceleration"), channel("accel_z", "acceleration"), channel("tacho_propeller_shaft", "pulses")],
    clock,
    times: null,
    values: [x.samples, z.samples, marks(pulses ?? new Float64Array(0), x.start, x.rate, x.samples.length)],
  };
  const speed: MemoryTrack = {
    channels: [channel("speed", "velocity")],
    clock: { kind: "stamped", count: log?.times.length ?? 0 },
    times: log?.times ?? null,
    values: [log?.speeds ?? new Float64Array(0)],
  };
  return memoryRecording([vibration, speed]);
}

/** The vibration and the mark alone, as a sound file can hold them. */
export const firstTrackOf = (recording: Recording): Recording => ({ ...recording, tracks: recording.tracks.slice(0, 1) });

/** 0 and 1, 1 for two samples after each pulse; the sample before a pulse is bent so that the edge crosses one half at its moment. */
function marks(pulses: Float64Array, start: number, rate: number, count: number): Float64Array {
  const out = new Float64Array(count);
  for (const time of pulses) {
    const place = (time - start) * rate;
    const after = Math.floor(place) + 1;
    if (after < 1 || after + 1 >= count) continue;
    // From low at `after - 1` to 1 at `after`, the line passes 0.5 at `place`.
    const share = place - (after - 1);
    out[after - 1] = share < 0.5 ? (0.5 - share) / (1 - share) : 0;
    out[after] = share < 0.5 ? 1 : 0.5 / share;
    out[after + 1] = 1;
  }
  return out;
}

export async function writeFile(path: string, parts: AsyncIterable<RecordingResult<Uint8Array>>): Promise<void> {
  const chunks: Uint8Array[] = [];
  for await (const part of parts) {
    if (!part.ok) throw new Error(`${part.code} ${JSON.stringify(part.params)}`);
    chunks.push(part.value);
  }
  writeFileSync(path, Buffer.concat(chunks));
}
