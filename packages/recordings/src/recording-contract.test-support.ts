import fc from "fast-check";
import { expect, it } from "vitest";
import type { ByteSource } from "./bytes/byte-source.js";
import { memorySource } from "./bytes/byte-source.js";
import type { ChannelScale } from "./channels/channel-scale.js";
import { memoryRecording } from "./memory-recording.js";
import { openRecording } from "./open-recording.js";
import type { Channel, Recording, RecordingFormat } from "./recording.js";
import type { RecordingResult } from "./recording-result.js";

/** One form of one format, as its writer and reader see it. */
export interface FormUnderTest {
  readonly format: RecordingFormat;
  readonly write: (recording: Recording) => AsyncIterable<RecordingResult<Uint8Array>>;
  /** What a person would have to say about the file's channels. */
  readonly scales: (channels: readonly Channel[]) => readonly ChannelScale[];
  /** Greatest |value - read| as a share of the largest |value| (or of full scale). */
  readonly tolerance: number;
  /** Greatest relative error of a step of time that the format's digits allow. */
  readonly stepTolerance: number;
}

export const accel = (name: string): Channel => ({ id: name, name, unit: "m/s^2", quantity: "acceleration", fullScale: null });

export async function bytesOf(parts: AsyncIterable<RecordingResult<Uint8Array>>): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  for await (const part of parts) {
    if (!part.ok) throw new Error(`${part.code} ${JSON.stringify(part.params)}`);
    chunks.push(part.value);
  }
  const whole = new Uint8Array(chunks.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}

export interface ReadTrack {
  readonly times: readonly number[];
  readonly values: readonly (readonly number[])[];
}

/** Reads tracks as one array per channel; throws on a fault, so that a test shows it. */
export async function readAll(recording: Recording, track = 0): Promise<ReadTrack> {
  const { channels, clock } = recording.tracks[track] as Recording["tracks"][number];
  const times: number[] = [];
  const values = channels.map((): number[] => []);
  for await (const block of recording.read({ track, channels: channels.map((_, k) => k) })) {
    if (!block.ok) throw new Error(`${block.code} ${block.path} ${JSON.stringify(block.params)}`);
    for (const [k, column] of block.value.values.entries()) values[k]?.push(...column);
    if (block.value.times !== null) times.push(...block.value.times);
    else if (clock.kind === "even")
      for (let k = 0; k < (block.value.values[0]?.length ?? 0); k++) times.push(clock.start + (block.value.first + k) / clock.rate);
  }
  return { times, values };
}

export async function opened(bytes: Uint8Array | ByteSource, scales: readonly ChannelScale[] = []): Promise<Recording> {
  const recording = await openRecording(bytes instanceof Uint8Array ? memorySource(bytes) : bytes, scales);
  if (!recording.ok) throw new Error(`${recording.code} ${recording.path} ${JSON.stringify(recording.params)}`);
  return recording.value;
}

/** A source that hands out a few bytes at a time, as a slow disk may. */
export const sparingSource = (bytes: Uint8Array, most: number): ByteSource => ({
  size: bytes.length,
  read: async (offset, length) => bytes.slice(offset, offset + Math.min(length, most)),
});

/** Channels of numbers on an even clock, of any sizes that a sensor may give. */
export const evenRecordings: fc.Arbitrary<{ readonly rate: number; readonly samples: readonly Float64Array[] }> = fc
  .record({ channels: fc.integer({ min: 1, max: 3 }), count: fc.integer({ min: 1, max: 60 }), rate: fc.integer({ min: 1, max: 50_000 }) })
  .chain(({ channels, count, rate }) =>
    fc.record({
      rate: fc.constant(rate),
      samples: fc.array(
        fc
          .array(fc.double({ min: -50, max: 50, noNaN: true }), { minLength: count, maxLength: count })
          .map((list) => Float64Array.from(list)),
        { minLength: channels, maxLength: channels },
      ),
    }),
  );

export const recordingOf = (rate: number, samples: readonly Float64Array[]): Recording =>
  memoryRecording([
    {
      channels: samples.map((_, k) => accel(`accel_${k}`)),
      clock: { kind: "even", start: 0, rate, count: samples[0]?.length ?? 0 },
      times: null,
      values: samples,
    },
  ]);

/** What every reader and writer keeps. */
export function keepsRecordingContract(form: FormUnderTest): void {
  const { format, write, scales, tolerance, stepTolerance } = form;
  const file = async (rate: number, samples: readonly Float64Array[]): Promise<Uint8Array> => bytesOf(write(recordingOf(rate, samples)));
  const columns = (recording: Recording): Promise<readonly ReadTrack[]> =>
    Promise.all(recording.tracks.map((_, k) => readAll(recording, k)));
  const scaled = (samples: readonly Float64Array[]): readonly ChannelScale[] => scales(samples.map((_, k) => accel(`accel_${k}`)));

  it("gives back what was written", async () => {
    await fc.assert(
      fc.asyncProperty(evenRecordings, async ({ rate, samples }) => {
        const recording = await opened(await file(rate, samples), scaled(samples));
        expect(recording.format).toBe(format);
        const tracks = await columns(recording);
        const read = tracks.flatMap(({ values }) => values);
        expect(read.map(({ length }) => length)).toEqual(samples.map(({ length }) => length));
        for (const [k, channel] of samples.entries()) {
          const worst = Math.max(...channel.map((value, n) => Math.abs(value - (read[k]?.[n] as number))));
          expect(worst).toBeLessThanOrEqual(tolerance);
        }
        const times = tracks[0]?.times ?? [];
        const late = Math.max(...times.map((time, n) => Math.abs(time - n / rate)));
        expect(late).toBeLessThanOrEqual((stepTolerance * times.length) / rate);
        expect(recording.tracks.flatMap(({ channels }) => channels.map(({ quantity }) => quantity))).toEqual(
          samples.map(() => "acceleration"),
        );
      }),
      { numRuns: 15 },
    );
  });

  it("reads the same again, and through a source that gives few bytes at a time", async () => {
    const samples = [Float64Array.from({ length: 900 }, (_, k) => Math.sin(k)), Float64Array.from({ length: 900 }, (_, k) => k % 7)];
    const bytes = await file(1000, samples);
    const recording = await opened(bytes, scaled(samples));
    const first = await columns(recording);
    expect(await columns(recording)).toEqual(first);
    expect(await columns(await opened(sparingSource(bytes, 13), scaled(samples)))).toEqual(first);
  });

  it("reads long recordings in stretches, all of them", async () => {
    const long = Float64Array.from({ length: 300_001 }, (_, k) => ((k * 7919) % 1000) / 100);
    const recording = await opened(await file(2000, [long]), scaled([long]));
    let [seen, blocks, largest] = [0, 0, 0];
    for await (const block of recording.read({ track: 0, channels: [0] })) {
      if (!block.ok) throw new Error(block.code);
      const values = block.value.values[0] as Float64Array;
      expect(block.value.first).toBe(seen);
      expect(Math.abs((values[0] as number) - (long[seen] as number))).toBeLessThanOrEqual(tolerance);
      seen += values.length;
      blocks++;
      largest = Math.max(largest, values.length);
    }
    expect(seen).toBe(long.length);
    expect(blocks).toBeGreaterThan(1);
    expect(largest).toBeLessThan(long.length);
  });

  it("takes the channels that are asked for, in that order", async () => {
    const samples = [Float64Array.of(1, 2, 3), Float64Array.of(-4, -5, -6)];
    const recording = await opened(await file(100, samples), scaled(samples));
    const both = (await columns(recording)).flatMap(({ values }) => values);
    if (recording.tracks.length > 1) return expect(both).toHaveLength(2);
    for await (const block of recording.read({ track: 0, channels: [1, 0, 1] })) {
      if (!block.ok) throw new Error(block.code);
      expect(block.value.values.map((values) => [...values])).toEqual([both[1], both[0], both[1]]);
    }
  });

  it("stops when told to, and says how far it has come", async () => {
    const long = new Float64Array(300_001).fill(1);
    const recording = await opened(await file(2000, [long]), scaled([long]));
    const shares: number[] = [];
    const controller = new AbortController();
    const reading = async (): Promise<void> => {
      const work = { signal: controller.signal, onProgress: (share: number) => void shares.push(share) };
      for await (const block of recording.read({ track: 0, channels: [0] }, work)) if (block.ok) controller.abort(new Error("enough"));
    };
    await expect(reading()).rejects.toThrow("enough");
    for await (const _ of recording.read({ track: 0, channels: [0] }, { onProgress: (share) => void shares.push(share) }));
    expect(shares.at(-1)).toBe(1);
    expect(shares.every((share) => share > 0 && share <= 1)).toBe(true);
  });

  it("refuses or reads a file that is cut at any place, and never throws", async () => {
    const samples = [Float64Array.from({ length: 12 }, (_, k) => k / 3)];
    const bytes = await file(500, samples);
    let refused = 0;
    for (let length = 0; length < bytes.length; length++) {
      const cut = await openRecording(memorySource(bytes.slice(0, length)), []);
      if (!cut.ok) {
        refused++;
        continue;
      }
      for await (const block of cut.value.read({ track: 0, channels: [0] })) if (!block.ok) refused++;
    }
    // A head that is cut is refused in every format; a table that is cut between two rows is a shorter table.
    expect(refused).toBeGreaterThan(10);
  });
}
