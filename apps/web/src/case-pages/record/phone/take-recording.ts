import { type Channel, memoryRecording, type Recording } from "@halfturn/recordings";
import { motionRecording } from "./motion-recording.js";
import type { TakeChunk, TakeHead } from "./take-store.js";

const SOUND: Channel = { id: "sound", name: "sound", unit: null, quantity: "share", fullScale: 1 };

/** One column of all chunks, end to end. */
export function columnOf(chunks: readonly TakeChunk[], name: string): Float64Array {
  const parts = chunks.map((chunk) => chunk[name] ?? new Float64Array(0));
  const whole = new Float64Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** A take as a recording; null where nothing was sensed. */
export function takeRecording({ kind, rate }: TakeHead, chunks: readonly TakeChunk[]): Recording | null {
  const column = (name: string): Float64Array => columnOf(chunks, name);
  if (kind === "motion") {
    const times = column("times");
    if (times.length === 0) return null;
    const [x, y, z, speedTimes, speeds] = [column("x"), column("y"), column("z"), column("speedTimes"), column("speeds")];
    return motionRecording({ times, x, y, z, speedTimes, speeds });
  }
  const samples = column("samples");
  if (samples.length === 0 || rate === null) return null;
  const clock = { kind: "even", start: 0, rate, count: samples.length } as const;
  return memoryRecording([{ channels: [SOUND], clock, times: null, values: [samples] }]);
}
