import { closeSync, fstatSync, openSync, readFileSync, readSync, writeFileSync, writeSync } from "node:fs";
import { join } from "node:path";
import type { AttributionInput } from "@halfturn/engine/attribution";
import { circumferenceAsGiven, rotatingParts } from "@halfturn/engine/orders";
import { type SampleReader, shaftAngleFromPulses } from "@halfturn/engine/signal";
import { simulateRoadTest } from "@halfturn/engine/simulation";
import type { MetresPerSecond } from "@halfturn/engine/units";

export const MINUTES = 10;
export const AXES = 3;
export const RATE = 4096;
const CIRCUMFERENCE = 2.42;
/** Made minute by minute, so that making it needs no more memory than working on it. */
const PIECE_SECONDS = 60;

const parts = rotatingParts(
  {
    circumference: circumferenceAsGiven(CIRCUMFERENCE),
    axleRatio: 3.73,
    transferRatio: 1,
    gearRatio: 0.72,
    cylinders: 6,
    slip: 0,
    accessories: [],
  },
  25 as MetresPerSecond,
);

const axisFile = (directory: string, axis: number): string => join(directory, `axis-${axis}.f64`);
const pulseFile = (directory: string): string => join(directory, "pulses.f64");

/**
 * Writes a drive as files of doubles: one per axis, and the pulses of its propeller shaft. Speed goes up and down by a fifth every minute; the propeller shaft
 * shakes once and twice a turn, the wheels once.
 */
export function writeLongDrive(directory: string): void {
  const handles = Array.from({ length: AXES }, (_, axis) => openSync(axisFile(directory, axis), "w"));
  const pulses: number[] = [];
  for (let minute = 0; minute < MINUTES; minute++) {
    const made = simulateRoadTest({
      seed: minute,
      parts,
      circumference: CIRCUMFERENCE,
      profile: { times: [0, PIECE_SECONDS / 2, PIECE_SECONDS], speeds: [22, 27, 22] },
      sources: [
        { kind: "harmonic", part: "propeller-shaft", order: 1, amplitude: 0.6, speedPower: 2, phase: 0, gains: [0.3, 0.5, 1] },
        { kind: "harmonic", part: "propeller-shaft", order: 2, amplitude: 0.2, speedPower: 0, phase: 1, gains: [1, 0.2, 0.4] },
        { kind: "harmonic", part: "wheel", order: 1, amplitude: 0.3, speedPower: 0, phase: 2, gains: [0.5, 0.5, 0.5] },
      ],
      referenceSpeed: 25,
      roadNoise: 0.8,
      noiseColour: "road",
      resonance: null,
      sensor: { rate: RATE, filter: null, noise: 0.05, offset: 0, drift: 0, fullScale: null, resolution: 0 },
      axes: AXES,
      log: null,
      tachometer: { part: "propeller-shaft", perTurn: 1, jitter: 1e-5 },
    });
    if (!made.ok) throw new Error(made.code);
    const count = PIECE_SECONDS * RATE;
    for (const [axis, { samples }] of made.value.channels.entries())
      writeSync(handles[axis] as number, new Uint8Array(samples.buffer, 0, count * Float64Array.BYTES_PER_ELEMENT));
    // The last pulse before the seam may lie closer to the next minute's first than a turn: leave it out.
    for (const pulse of made.value.pulses ?? []) if (pulse < PIECE_SECONDS - 0.02) pulses.push(minute * PIECE_SECONDS + pulse);
  }
  for (const handle of handles) closeSync(handle);
  writeFileSync(pulseFile(directory), Float64Array.from(pulses));
}

/** Reads from a file as it is asked, and holds nothing. */
function fileReader(file: string): SampleReader {
  const handle = openSync(file, "r");
  const length = fstatSync(handle).size / Float64Array.BYTES_PER_ELEMENT;
  return {
    rate: RATE,
    start: 0,
    length,
    read: (first, out) => {
      const bytes = new Uint8Array(out.buffer, out.byteOffset, out.byteLength);
      readSync(handle, bytes, 0, bytes.length, first * Float64Array.BYTES_PER_ELEMENT);
    },
  };
}

/** What attribution is given of the drive. */
export function inputOf(directory: string): AttributionInput {
  const pulses = new Float64Array(Uint8Array.from(readFileSync(pulseFile(directory))).buffer);
  const counted = shaftAngleFromPulses(pulses, 1);
  if (!counted.ok) throw new Error(counted.code);
  return {
    channels: Array.from({ length: AXES }, (_, axis) => ({
      samples: fileReader(axisFile(directory, axis)),
      quantity: "acceleration",
      fullScale: null,
    })),
    reference: { angle: counted.value.angle, perWheelTurn: 3.73, looseness: 0 },
    parts,
    filter: null,
  };
}
