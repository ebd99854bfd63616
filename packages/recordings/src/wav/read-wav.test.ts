import { describe, expect, it } from "vitest";
import { memorySource } from "../bytes/byte-source.js";
import { memoryRecording } from "../memory-recording.js";
import { openRecording } from "../open-recording.js";
import { accel, bytesOf, opened, readAll, recordingOf } from "../recording-contract.test-support.js";
import { writeWav } from "./write-wav.js";

const text = (word: string): number[] => [...word].map((letter) => letter.charCodeAt(0));
const u16 = (value: number): number[] => [value & 0xff, value >> 8];
const u32 = (value: number): number[] => [0, 8, 16, 24].map((shift) => (value >>> shift) & 0xff);
const u64 = (value: number): number[] => [...u32(value), 0, 0, 0, 0];
const chunk = (id: string, body: readonly number[], length = body.length): number[] => [
  ...text(id),
  ...u32(length),
  ...body,
  ...(body.length % 2 === 1 ? [0] : []),
];
interface Format {
  readonly tag?: number;
  readonly channels?: number;
  readonly rate?: number;
  readonly bits?: number;
  readonly align?: number;
}
const fmt = ({ tag = 1, channels = 1, rate = 1000, bits = 16, align = (channels * bits) / 8 }: Format = {}): number[] =>
  chunk("fmt ", [...u16(tag), ...u16(channels), ...u32(rate), ...u32(rate * align), ...u16(align), ...u16(bits)]);
const SAMPLES = [...u16(16_384), ...u16(0x8000)];
const file = (...chunks: readonly number[][]): Uint8Array =>
  Uint8Array.from([...text("RIFF"), ...u32(0), ...text("WAVE"), ...chunks.flat()]);
const HALF_AND_LOWEST = [[0.5, -1]];

describe("readWav", () => {
  it.each([
    ["the plainest file", file(fmt(), chunk("data", SAMPLES))],
    ["unknown chunks, odd ones with their padding", file(chunk("LIST", [1, 2, 3]), fmt(), chunk("bext", [9]), chunk("data", SAMPLES))],
    ["chunks after the data", file(fmt(), chunk("data", SAMPLES), chunk("cue ", [1, 2, 3, 4]))],
    ["a length that was left open", file(fmt(), chunk("data", SAMPLES, 0xffff_ffff))],
    ["a length that was left at zero", file(fmt(), chunk("data", SAMPLES, 0))],
    [
      "RF64",
      Uint8Array.from([
        ...text("RF64"),
        ...u32(0xffff_ffff),
        ...text("WAVE"),
        ...chunk("ds64", [...u64(80), ...u64(4), ...u64(2), ...u32(0)]),
        ...fmt(),
        ...chunk("data", SAMPLES, 0xffff_ffff),
      ]),
    ],
    [
      "an extensible format",
      file(
        chunk("fmt ", [
          ...u16(0xfffe),
          ...u16(1),
          ...u32(1000),
          ...u32(2000),
          ...u16(2),
          ...u16(16),
          ...u16(22),
          ...u16(16),
          ...u32(4),
          ...u16(1),
          ...new Array<number>(14).fill(0),
        ]),
        chunk("data", SAMPLES),
      ),
    ],
  ])("reads %s", async (_, bytes) => {
    const recording = await opened(bytes);
    expect(recording.tracks[0]?.clock).toEqual({ kind: "even", start: 0, rate: 1000, count: 2 });
    expect((await readAll(recording)).values).toEqual(HALF_AND_LOWEST);
  });

  it("says that full scale is not known, and that a length was left open", async () => {
    const recording = await opened(file(fmt(), chunk("data", SAMPLES, 0)));
    expect(recording.notes.map(({ code }) => code)).toEqual(["recording.length-open", "recording.no-full-scale"]);
  });

  it("knows the greatest value of whole numbers, and none of floats", async () => {
    const scales = [{ id: "channel_1", unit: "g", fullScale: 2 }];
    const whole = await openRecording(memorySource(file(fmt(), chunk("data", SAMPLES))), scales);
    expect(whole.ok && whole.value.tracks[0]?.channels[0]?.fullScale).toBe(2 * 9.806_65);
    const floats = await openRecording(memorySource(file(fmt({ tag: 3, bits: 32 }), chunk("data", SAMPLES))), scales);
    expect(floats.ok && floats.value.tracks[0]?.channels[0]?.fullScale).toBe(null);
  });

  it("takes channels apart", async () => {
    const recording = await opened(file(fmt({ channels: 2, bits: 8 }), chunk("data", [128, 192, 0, 64])));
    expect((await readAll(recording)).values).toEqual([
      [0, -1],
      [0.5, -0.5],
    ]);
  });

  it.each([
    ["no samples", file(fmt(), chunk("data", [])), "recording.no-samples"],
    ["no format", file(chunk("data", SAMPLES)), "recording.part-missing"],
    ["no data", file(fmt()), "recording.part-missing"],
    ["data that promise more", file(fmt(), chunk("data", SAMPLES, 4_000_000_000)), "recording.truncated"],
    ["a chunk that promises more", file(chunk("LIST", [1, 2], 3_000_000_000)), "recording.truncated"],
    ["a compressed format", file(fmt({ tag: 2 }), chunk("data", SAMPLES)), "recording.encoding-unsupported"],
    ["no channels", file(fmt({ channels: 0 }), chunk("data", SAMPLES)), "recording.header-contradicts"],
    ["a rate of zero", file(fmt({ rate: 0 }), chunk("data", SAMPLES)), "recording.header-contradicts"],
    ["a block that does not fit its samples", file(fmt({ align: 3 }), chunk("data", SAMPLES)), "recording.header-contradicts"],
    ["half a frame", file(fmt({ channels: 2 }), chunk("data", SAMPLES.slice(0, 2))), "recording.header-contradicts"],
    ["another RIFF", Uint8Array.from([...text("RIFF"), ...u32(4), ...text("AVI ")]), "recording.encoding-unsupported"],
    ["the first letters only", Uint8Array.from(text("RIFF")), "recording.truncated"],
    ["chunks without end", file(...Array.from({ length: 10_001 }, () => chunk("junk", []))), "recording.too-many"],
  ])("refuses %s", async (_, bytes, code) => {
    expect(await openRecording(memorySource(bytes))).toMatchObject({ ok: false, code });
  });

  it("opens a file of many gigabytes by its head alone", async () => {
    const head = Uint8Array.from([
      ...text("RF64"),
      ...u32(0xffff_ffff),
      ...text("WAVE"),
      ...chunk("ds64", [...u64(0), ...u32(0), ...u32(2), ...u64(0), ...u32(0)]),
      ...fmt(),
      ...text("data"),
      ...u32(0xffff_ffff),
    ]);
    let read = 0;
    const source = {
      size: head.length + 2 * 2 ** 32,
      read: async (offset: number, length: number) => {
        read += length;
        return head.slice(offset, offset + length);
      },
    };
    expect((await opened(source)).tracks[0]?.clock).toMatchObject({ count: 2 ** 32 });
    expect(read).toBeLessThan(10_000);
  });
});

describe("writeWav", () => {
  const form = { encoding: "pcm16", fullScale: 10 } as const;
  const faultOf = async (recording: Parameters<typeof writeWav>[0]): Promise<unknown> => {
    for await (const part of writeWav(recording, form)) if (!part.ok) return part;
    return null;
  };
  const track = {
    channels: [accel("a")],
    clock: { kind: "even", start: 0, rate: 100, count: 1 },
    times: null,
    values: [Float64Array.of(1)],
  } as const;

  it("refuses what a WAV cannot hold", async () => {
    expect(await faultOf(memoryRecording([]))).toMatchObject({ params: { what: "nothing" } });
    expect(await faultOf(memoryRecording([track, track]))).toMatchObject({ params: { what: "several-clocks" } });
    expect(await faultOf(recordingOf(100.5, [Float64Array.of(1)]))).toMatchObject({ params: { what: "uneven-clock" } });
    expect(await faultOf(memoryRecording([{ ...track, clock: { kind: "stamped", count: 1 }, times: Float64Array.of(0) }]))).toMatchObject({
      params: { what: "uneven-clock" },
    });
    expect(await faultOf(recordingOf(100, [Float64Array.of(Number.NaN)]))).toMatchObject({ params: { what: "missing-values" } });
  });

  it("holds what is beyond full scale at full scale, and pads an odd length", async () => {
    const bytes = await bytesOf(writeWav(recordingOf(100, [Float64Array.of(-11, 0, 11)]), { encoding: "pcm24", fullScale: 10 }));
    expect(bytes.length % 2).toBe(0);
    expect((await readAll(await opened(bytes))).values).toEqual([[-1, 0, 1 - 2 ** -23]]);
  });
});
