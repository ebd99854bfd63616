import { closeSync, openSync, writeSync } from "node:fs";
import type { Block, Channel, Recording, RecordingResult } from "@halfturn/recordings";

const RATE = 4096;
/** Turns of the propeller shaft per metre of the two-piece example in gear 5. */
const PER_METRE = 3.73 / 2.42;

const axis = (id: string): Channel => ({ id, name: id, unit: null, quantity: "acceleration", fullScale: null });
const CHANNELS: readonly Channel[] = [
  axis("accel_x"),
  axis("accel_y"),
  axis("accel_z"),
  { id: "tacho_propeller_shaft", name: "tacho_propeller_shaft", unit: null, quantity: "pulses", fullScale: null },
];

/**
 * A drive of any length, made as it is read: three axes at 4,096 Hz, shaken by the propeller shaft's first order under a hiss, and a mark on the shaft. Speed goes
 * up and down between 20 and 26 m/s.
 */
export const longDrive = (seconds: number): Recording => ({
  format: "memory",
  notes: [],
  tracks: [{ clock: { kind: "even", start: 0, rate: RATE, count: seconds * RATE }, channels: CHANNELS }],
  read: ({ channels }) => blocksOf(seconds, channels),
});

async function* blocksOf(seconds: number, channels: readonly number[]): AsyncGenerator<RecordingResult<Block>> {
  let [turns, state] = [0, 1];
  const hiss = (): number => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647 - 0.5;
  };
  for (let second = 0; second < seconds; second++) {
    const all = CHANNELS.map(() => new Float64Array(RATE));
    const [x, y, z, mark] = all as [Float64Array, Float64Array, Float64Array, Float64Array];
    for (let k = 0; k < RATE; k++) {
      turns += ((23 + 3 * Math.sin((second + k / RATE) / 20)) * PER_METRE) / RATE;
      const shake = Math.cos(2 * Math.PI * turns);
      x[k] = 0.3 * shake + hiss();
      y[k] = hiss();
      z[k] = shake + hiss();
      mark[k] = turns % 1 < 0.2 ? 1 : 0;
    }
    yield {
      ok: true,
      value: { first: second * RATE, times: null, values: channels.map((channel) => all[channel] as Float64Array), notes: [] },
    };
  }
}

/** Writes a file of any length piece by piece. */
export async function writeLong(path: string, parts: AsyncIterable<RecordingResult<Uint8Array>>): Promise<void> {
  const file = openSync(path, "w");
  try {
    for await (const part of parts) {
      if (!part.ok) throw new Error(part.code);
      writeSync(file, part.value);
    }
  } finally {
    closeSync(file);
  }
}
