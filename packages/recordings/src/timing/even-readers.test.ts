import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type MemoryTrack, memoryRecording } from "../memory-recording.js";
import { accel } from "../recording-contract.test-support.js";
import { type EvenChannel, evenChannel } from "./even-channel.test-support.js";
import { slowChannel } from "./slow-channel.js";

const stamped = (times: readonly number[], values: readonly number[]): MemoryTrack => ({
  channels: [accel("z")],
  clock: { kind: "stamped", count: null },
  times: Float64Array.from(times),
  values: [Float64Array.from(values)],
});

const RATE = 400;
const TONE = 25;
const tone = (time: number): number => Math.sin(2 * Math.PI * TONE * time);
const even = (count: number): readonly number[] => Array.from({ length: count }, (_, k) => k / RATE);

async function channelOf(track: MemoryTrack): Promise<EvenChannel> {
  const channel = await evenChannel(memoryRecording([track]), 0, 0);
  if (!channel.ok) throw new Error(`${channel.code} ${JSON.stringify(channel.params)}`);
  return channel.value;
}
const codes = ({ notes }: EvenChannel): readonly string[] => notes.map(({ code }) => code);
/** Greatest distance of the runs from the tone itself. */
const worst = ({ runs }: EvenChannel): number =>
  Math.max(...runs.flatMap(({ samples, start, rate }) => [...samples].map((value, n) => Math.abs(value - tone(start + n / rate)))));

/** A fixed scatter between -1 and 1. */
const scatter = (k: number): number => Math.sin(k * 12.9898) * Math.cos(k * 4.1414);

/** A cubic through four samples of a tone at a sixteenth of the rate: h^4 w^4 / 24 x 9/16 = 5.6e-4 in the middle, four times at an end. */
const CUBIC = 3e-3;
/** The same across a sample that is missing: h^4 w^4 / 24 x 4 = 4.0e-3. */
const FILLED = 4e-3;
/** Least squares over stamps that are doubles. */
const ROUNDING = 1e-9;

describe("a channel on even steps", () => {
  it("leaves an even clock alone", async () => {
    const samples = Float64Array.from(even(100), tone);
    const track: MemoryTrack = {
      channels: [accel("z")],
      clock: { kind: "even", start: 2, rate: RATE, count: 100 },
      times: null,
      values: [samples],
    };
    const channel = await channelOf(track);
    expect(channel).toMatchObject({ method: "even", rate: RATE, jitterShare: 0, gaps: [], notes: [] });
    expect(channel.runs).toEqual([{ samples, rate: RATE, start: 2 }]);
  });

  it("counts stamps that are even, and measures their rate", async () => {
    const channel = await channelOf(stamped(even(500), even(500).map(tone)));
    expect(channel.method).toBe("counted");
    expect(Math.abs(channel.rate / RATE - 1)).toBeLessThan(ROUNDING);
    expect(channel.jitterShare).toBeLessThan(ROUNDING);
    expect(codes(channel)).toEqual([]);
    expect(worst(channel)).toBeLessThan(1e-6);
  });

  it("takes rounded stamps as even, and says so", async () => {
    const channel = await channelOf(
      stamped(
        even(4000).map((time) => Math.round(time * 1000) / 1000),
        even(4000).map(tone),
      ),
    );
    expect(channel.method).toBe("counted");
    expect(codes(channel)).toEqual(["recording.stamps-rounded"]);
    // Rounding to 1 ms of steps of 2.5 ms: the stamps alternate by half a millisecond.
    expect(Math.abs(channel.rate / RATE - 1)).toBeLessThan(1e-6);
    expect(worst(channel)).toBeLessThan(2 * Math.PI * TONE * 0.5e-3);
  });

  it("counts coarse stamps that repeat", async () => {
    const times = even(4000).map((time) => Math.floor(time * 100) / 100);
    const channel = await channelOf(stamped(times, even(4000).map(tone)));
    expect(channel.runs[0]?.samples).toHaveLength(4000);
    expect(channel.method).toBe("counted");
    expect(Math.abs(channel.rate / RATE - 1)).toBeLessThan(1e-4);
  });

  it("interpolates at stamps that jitter, and says by how much", async () => {
    const times = even(4000).map((time, k) => time + (0.2 * scatter(k)) / RATE);
    const channel = await channelOf(stamped(times, times.map(tone)));
    expect(channel.method).toBe("interpolated");
    expect(codes(channel)).toEqual(["recording.stamps-uneven"]);
    const rms = Math.sqrt(times.reduce((sum, _, k) => sum + (0.2 * scatter(k)) ** 2, 0) / times.length);
    expect(Math.abs(channel.jitterShare / rms - 1)).toBeLessThan(0.01);
    expect(worst(channel)).toBeLessThan(CUBIC);
  });

  it("fills a sample that is missing from its neighbours, and says so", async () => {
    const values = even(500).map(tone);
    const channel = await channelOf(stamped(even(500), values.with(100, Number.NaN).with(300, Number.NaN)));
    expect(channel.runs[0]?.samples).toHaveLength(500);
    expect(codes(channel)).toEqual(["recording.values-missing"]);
    expect(channel.notes[0]?.params.count).toBe(2);
    expect(worst(channel)).toBeLessThan(FILLED);
  });

  it("parts a channel at its gaps, and says how much is lost", async () => {
    const kept = even(1000).filter((_, k) => k < 300 || (k > 340 && k < 700) || k > 703);
    const channel = await channelOf(stamped(kept, kept.map(tone)));
    expect(channel.runs.map(({ samples }) => samples.length)).toEqual([300, 359, 296]);
    expect(channel.gaps.map(({ start }) => start)).toEqual([299 / RATE, 699 / RATE]);
    expect(codes(channel)).toEqual(["recording.gaps"]);
    expect(worst(channel)).toBeLessThan(1e-6);
  });

  it("drops a sample that was written twice", async () => {
    const times = even(500).toSpliced(200, 0, 200 / RATE);
    const channel = await channelOf(stamped(times, times.map(tone)));
    expect(channel.runs[0]?.samples).toHaveLength(500);
    expect(codes(channel)).toEqual(["recording.times-repeat"]);
    expect(worst(channel)).toBeLessThan(1e-6);
  });

  it("finds the rate of any steady clock from any start", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.double({ min: 1, max: 20_000, noNaN: true }),
        fc.double({ min: -1000, max: 1000, noNaN: true }),
        async (rate, start) => {
          const times = Array.from({ length: 64 }, (_, k) => start + k / rate);
          const channel = await channelOf(stamped(times, times));
          expect(Math.abs(channel.rate / rate - 1)).toBeLessThan(1e-6);
        },
      ),
    );
  });

  it.each([
    ["time that runs backwards", [...even(50), 0.01], "recording.time-backwards"],
    ["too few samples", even(10), "recording.too-few-samples"],
    ["time that stands still", new Array<number>(50).fill(1), "recording.no-steady-rate"],
    ["no rate at all", Array.from({ length: 40 }, (_, k) => 1.7 ** k), "recording.no-steady-rate"],
  ])("refuses %s", async (_, times, code) => {
    expect(await evenChannel(memoryRecording([stamped(times, times)]), 0, 0)).toMatchObject({ ok: false, code });
  });

  it("refuses a channel without a value", async () => {
    const track = stamped(even(50), new Array<number>(50).fill(Number.NaN));
    expect(await evenChannel(memoryRecording([track]), 0, 0)).toMatchObject({ ok: false, code: "recording.no-samples" });
  });
});

describe("slowChannel", () => {
  it("keeps the samples that have a value and a time of their own", async () => {
    const track = stamped([0, 0.1, 0.2, 0.2, 0.3], [10, Number.NaN, 12, 13, 14]);
    expect(await slowChannel(memoryRecording([track]), 0, 0)).toMatchObject({
      ok: true,
      value: { times: Float64Array.of(0, 0.2, 0.3), values: Float64Array.of(10, 12, 14) },
    });
  });
});
