import { type Case, toPowertrain } from "@halfturn/casefile";
import { rotatingParts } from "@halfturn/engine/orders";
import { type RoadTest, simulateRoadTest } from "@halfturn/engine/simulation";
import { toSi } from "@halfturn/engine/units";
import { type Channel, memoryRecording, type Recording, type RecordingResult, writeCsv, writeWav } from "@halfturn/recordings";

const RATE = 400;
const SPEED_KMH = 85;

export interface MadeUpDrive {
  readonly gear: string;
  /** What shakes, and how hard at the speed of the complaint, m/s^2. */
  readonly shakes: { readonly part: string; readonly order: number; readonly amplitude: number };
  /** How long it takes; half a minute when left out. */
  readonly seconds?: number;
}

const channel = (id: string, quantity: Channel["quantity"]): Channel => ({ id, name: id, unit: null, quantity, fullScale: null });

/** A drive of a case's vehicle through its complaint, as a sensor and a speed log keep it: two axes on one clock, the speed on its own. */
export function madeUpDrive(document: Case, { gear, shakes, seconds = 30 }: MadeUpDrive): Recording {
  const speed = toSi(SPEED_KMH, "km/h");
  const found = toPowertrain(document, { gear, speed });
  if (!found.ok) throw new Error("the case lacks what turns");
  const test: RoadTest = {
    seed: 11,
    parts: rotatingParts(found.powertrain, speed),
    circumference: found.powertrain.circumference.value,
    profile: { times: [0, seconds / 2, seconds], speeds: [20, 26, 22] },
    sources: [{ kind: "harmonic", speedPower: 0, phase: 0.4, gains: [0.3, 1], ...shakes }],
    referenceSpeed: 23,
    roadNoise: 0.3,
    noiseColour: "white",
    resonance: null,
    sensor: { rate: RATE, filter: null, noise: 0.01, offset: 0.1, drift: 0, fullScale: null, resolution: 0 },
    axes: 2,
    log: { interval: 0.5, lag: 0, resolution: 0, scale: 0, noise: 0.02 },
    tachometer: null,
  };
  const made = simulateRoadTest(test);
  if (!made.ok) throw new Error(made.code);
  const { channels, log } = made.value;
  const samples = channels.map((one) => one.samples);
  const clock = { kind: "even", start: 0, rate: RATE, count: samples[0]?.length ?? 0 } as const;
  const vibration = {
    channels: [channel("accel_x", "acceleration"), channel("accel_z", "acceleration")],
    clock,
    times: null,
    values: samples,
  };
  const times = log?.times ?? new Float64Array(0);
  const speedLog = {
    channels: [channel("speed", "velocity")],
    clock: { kind: "stamped", count: times.length } as const,
    times,
    values: [log?.speeds ?? new Float64Array(0)],
  };
  return memoryRecording([vibration, speedLog]);
}

/** The recording as a file to be chosen in a page. */
export async function asFile(
  recording: Recording,
  name: string,
): Promise<{ readonly name: string; readonly mimeType: string; readonly buffer: Buffer }> {
  const isWav = name.endsWith(".wav");
  const [track] = recording.tracks;
  const alone = track ? { ...recording, tracks: [track] } : recording;
  const parts = isWav ? writeWav(alone, { encoding: "pcm16", fullScale: 8 }) : writeCsv(recording, { separator: ",", decimal: "." });
  return { name, mimeType: isWav ? "audio/wav" : "text/csv", buffer: await joined(parts) };
}

async function joined(parts: AsyncIterable<RecordingResult<Uint8Array>>): Promise<Buffer> {
  const kept: Uint8Array[] = [];
  for await (const part of parts) {
    if (!part.ok) throw new Error(part.code);
    kept.push(part.value);
  }
  return Buffer.concat(kept);
}
