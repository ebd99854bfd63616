import { memoryRecording, memorySource, openRecording, type Recording, type RecordingResult } from "@halfturn/recordings";

const RATE = 2000;

/** What a road test records: three axes of acceleration at 2 kHz, m/s^2, with all their digits. */
export function longRecording(seconds: number): Recording {
  const count = RATE * seconds;
  const channels = ["accel_x", "accel_y", "accel_z"].map((name) => ({
    id: name,
    name,
    unit: "m/s^2",
    quantity: "acceleration" as const,
    fullScale: null,
  }));
  const values = channels.map((_, axis) =>
    Float64Array.from({ length: count }, (_, k) => Math.sin((axis + 1) * k * 0.37) * 3 + Math.sin(k * 0.011)),
  );
  return memoryRecording([{ channels, clock: { kind: "even", start: 0, rate: RATE, count }, times: null, values }]);
}

/** The whole of what a writer gives. */
export async function wholeFile(parts: AsyncIterable<RecordingResult<Uint8Array>>): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  for await (const part of parts) {
    // A programmer error: the recording above can be written in every format.
    if (!part.ok) throw new RangeError(part.code);
    chunks.push(part.value);
  }
  return new Uint8Array(Buffer.concat(chunks));
}

/** Reads every sample of every channel; their sum, or NaN where the file was refused. */
export async function sumOfSamples(bytes: Uint8Array): Promise<number> {
  const recording = await openRecording(memorySource(bytes));
  if (!recording.ok) return Number.NaN;
  let sum = 0;
  for (const [track, { channels }] of recording.value.tracks.entries()) {
    for await (const block of recording.value.read({ track, channels: channels.map((_, k) => k) })) {
      if (!block.ok) return Number.NaN;
      for (const values of block.value.values) for (const value of values) sum += value;
    }
  }
  return sum;
}
