import { closeSync, openSync, writeSync } from "node:fs";

const RATE = 4096;
const BYTES = 2;
const CHANNELS = 2;
const HEAD = 44;
/** Driven at. */
const LONG_SPEED_KMH = 85;
/** Turns of the propeller shaft per metre of the two-piece example. */
const PER_METRE = 3.73 / 2.42;
/** Of full scale. */
const LOUD = 8000;
/** Marks on the propeller shaft that pass its tachometer in a turn, and how much of the way between two of them a mark takes up. */
export const LONG_PER_TURN = 2;
const MARK = 0.3;

/** Writes a drive of any length second by second: an axis at 4,096 Hz, shaken at a steady speed by the propeller shaft's first order under a hiss, and that shaft's tachometer. */
export function writeLongWav(path: string, seconds: number): void {
  const file = openSync(path, "w");
  try {
    writeSync(file, head(seconds));
    let [turns, state] = [0, 1];
    const hiss = (): number => {
      state = (state * 48_271) % 2_147_483_647;
      return state / 2_147_483_647 - 0.5;
    };
    for (let second = 0; second < seconds; second++) {
      const samples = new Int16Array(CHANNELS * RATE);
      for (let k = 0; k < RATE; k++) {
        turns += ((LONG_SPEED_KMH / 3.6) * PER_METRE) / RATE;
        const shake = Math.cos(2 * Math.PI * turns);
        samples[CHANNELS * k] = Math.round(LOUD * (shake + hiss()));
        samples[CHANNELS * k + 1] = (turns * LONG_PER_TURN) % 1 < MARK ? LOUD : 0;
      }
      writeSync(file, new Uint8Array(samples.buffer));
    }
  } finally {
    closeSync(file);
  }
}

function head(seconds: number): Buffer {
  const bytes = seconds * RATE * BYTES * CHANNELS;
  const made = Buffer.alloc(HEAD);
  made.write("RIFF", 0);
  made.writeUInt32LE(HEAD - 8 + bytes, 4);
  made.write("WAVEfmt ", 8);
  made.writeUInt32LE(16, 16);
  made.writeUInt16LE(1, 20);
  made.writeUInt16LE(CHANNELS, 22);
  made.writeUInt32LE(RATE, 24);
  made.writeUInt32LE(RATE * BYTES * CHANNELS, 28);
  made.writeUInt16LE(BYTES * CHANNELS, 32);
  made.writeUInt16LE(8 * BYTES, 34);
  made.write("data", 36);
  made.writeUInt32LE(bytes, 40);
  return made;
}
