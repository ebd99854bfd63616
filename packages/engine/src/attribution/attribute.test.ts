import { expect, test } from "vitest";
import { readerOf } from "../signal/index.js";
import { must } from "../signal/shaft-angle.test-support.js";
import type { RoadTest } from "../simulation/index.js";
import { partsOf, quietSensor, recorded, shake } from "./attribution-cases.test-support.js";
import { type Attribution, attribute, attributionSteps } from "./index.js";

const run = async (change: Partial<RoadTest> = {}, by: "pulses" | "log" = "pulses"): Promise<Attribution> =>
  must(await attribute(recorded(change, by)));
const of = ({ contributions }: Attribution, part: string, order: number) =>
  contributions.find((one) => one.part === part && one.order === order);
const codes = ({ findings }: Attribution): readonly string[] => findings.map(({ code }) => code);

/** Agreed: a swept run without noise is right to 0.1 %. */
const NOISE_FREE = 1e-3;

test("amplitudes of a swept run without noise are right to 0.1 %, each order by itself", async () => {
  const shakes = [shake("wheel", 1, 0.4), shake("propeller-shaft", 1, 1), shake("propeller-shaft", 2, 0.25), shake("engine", 3, 0.1)];
  const result = await run({ sources: shakes });
  for (const { part, order, amplitude } of shakes)
    expect(Math.abs((of(result, part, order)?.amplitudes[0]?.value ?? NaN) / amplitude - 1)).toBeLessThan(NOISE_FREE);
  for (const [part, order] of [
    ["wheel", 2],
    ["propeller-shaft", 4],
    ["engine", 0.5],
  ] as const)
    expect(of(result, part, order)?.amplitudes[0]?.value).toBeLessThan(NOISE_FREE);
  expect(result.verdict).toMatchObject({ part: "propeller-shaft", order: 1 });
  expect(result.unexplainedShare).toBeLessThan(NOISE_FREE);
  const shares = result.contributions.reduce((sum, { share }) => sum + (share ?? 0), 0);
  expect(Math.abs(shares - 1)).toBeLessThan(2 * NOISE_FREE);
});

test("the course of an order holds its amplitude and phase block by block", async () => {
  const course = of(await run(), "propeller-shaft", 1)?.course;
  expect(course?.times.length).toBeGreaterThan(20);
  for (const [i, phase] of (course?.phases ?? []).entries()) {
    // The shaft's angle is counted from its first pulse, and so is the source's phase of 0.3 rad from the start.
    expect(Math.abs(phase - 0.3)).toBeLessThan(0.01);
    expect(Math.abs((course?.amplitudes[i] ?? NaN) - 1)).toBeLessThan(NOISE_FREE);
    expect(course?.times[i]).toBeGreaterThan(course?.times[i - 1] ?? 0);
  }
});

test("in noise of four times its power the cause is named from the speed log alone, and the log's error is found", async () => {
  const result = await run({ roadNoise: 1.4, log: { interval: 0.5, lag: 0.5, resolution: 0.1, scale: 0.015, noise: 0.03 } }, "log");
  expect(result.verdict).toMatchObject({ part: "propeller-shaft", order: 1 });
  expect(codes(result)).toContain("attribution.speed-corrected");
  expect(result.readings).toHaveLength(1);
  // The log reads 1.5 % too much, and comes half a second late while the speed rises by a tenth.
  expect(Math.abs((result.readings[0]?.scale ?? NaN) - 1 / 1.015)).toBeLessThan(0.01);
});

test("noise alone names nothing", async () => {
  const result = await run({ sources: [], roadNoise: 1 }, "log");
  expect(result).toMatchObject({ verdict: null, abstained: { reason: "nothing" } });
  expect(result.noneProbability).toBeGreaterThan(0.5);
  expect(codes(result)).toEqual(["attribution.nothing-found"]);
});

test("where two orders coincide it abstains and names both, and what parts them", async () => {
  const parts = partsOf({ gearRatio: 1 });
  const result = await run({ parts, roadNoise: 0.3 });
  expect(result.verdict).toBeNull();
  expect(result.abstained?.reason).toBe("coincidence");
  expect(result.abstained?.between).toEqual(
    expect.arrayContaining([
      { part: "propeller-shaft", order: 1 },
      { part: "engine", order: 1 },
    ]),
  );
  expect(of(result, "engine", 1)?.together).toContainEqual({ part: "propeller-shaft", order: 1 });
  expect(result.findings.find(({ code }) => code === "attribution.coincidence")?.params).toMatchObject({ partedByGear: true });
});

test("a speed known to 2.5 % cannot say which of two orders 1 % apart it is, unless another order shows where they are", async () => {
  const parts = partsOf({ axleRatio: 3.2, gearRatio: null });
  const near = { parts, sources: [shake("propeller-shaft", 1)], tachometer: null, roadNoise: 0.3 };
  const close = await run({ ...near, parts: partsOf({ axleRatio: 3.03, gearRatio: null }) }, "log");
  expect(close).toMatchObject({ verdict: null, abstained: { reason: "coincidence" } });
  expect((await run(near, "log")).verdict).toMatchObject({ part: "propeller-shaft" });
});

test("what lies above half the rate is not ruled out by silence, and is named where it folds back", async () => {
  const phone = { ...quietSensor, rate: 100, noise: 0.1 };
  const silent = await run({ sensor: phone });
  for (const [part, order] of [
    ["propeller-shaft", 2],
    ["propeller-shaft", 4],
    ["engine", 3],
  ] as const)
    expect(of(silent, part, order)).toMatchObject({ observable: false, probability: null, share: null, amplitudes: [] });
  expect(silent.findings.filter(({ code }) => code === "attribution.order-not-observable")).toHaveLength(3);
  const folded = await run({ sensor: phone, sources: [shake("propeller-shaft", 4)], roadNoise: 0.2 });
  expect(folded.verdict).toBeNull();
  expect(folded.findings.find(({ code }) => code === "attribution.folded-back")?.params).toMatchObject({
    part: "propeller-shaft",
    order: 4,
  });
  const filtered = await run({ sensor: { ...phone, filter: 40 }, sources: [shake("propeller-shaft", 4)], roadNoise: 0.2 });
  expect(of(filtered, "propeller-shaft", 4)?.foldsTo).toBeNull();
});

test("clipping, a steady speed, a beat and a resonance are said", async () => {
  const clipped = await run({ sensor: { ...quietSensor, fullScale: 0.8 } });
  expect(clipped.findings.find(({ code }) => code === "attribution.clipped")).toMatchObject({ path: "channels[0]", severity: "warn" });
  expect(codes(await run({ profile: { times: [0, 60], speeds: [25, 25] }, roadNoise: 0.1 }))).toContain("attribution.speed-steady");
  const beating = await run({
    parts: partsOf({ axleRatio: 3.2 }),
    sources: [shake("wheel", 3, 0.8), shake("propeller-shaft", 1)],
    roadNoise: 0.1,
  });
  // A fifth of a wheel order at about ten turns a second.
  const beat = beating.findings.find(({ code }) => code === "attribution.beat")?.params.beatHz;
  expect(Math.abs(Number(beat) - 2)).toBeLessThan(0.2);
  const ringing = await run({ resonance: { frequency: 36, damping: 0.05, roadRms: 0.5 }, roadNoise: 0.2 });
  const found = ringing.resonances.map(({ excitedBy }) => excitedBy);
  expect(found).toEqual(expect.arrayContaining(["road", "orders"]));
  for (const { frequency } of ringing.resonances) expect(Math.abs(frequency - 36)).toBeLessThan(2);
  const ordinary = await run({ roadNoise: 0.5 });
  expect(ordinary.resonances).toEqual([]);
  expect(codes(ordinary)).toEqual([]);
});

test("a microphone tells frequencies only", async () => {
  const input = recorded({ roadNoise: 0.5 });
  const sound = must(await attribute({ ...input, channels: input.channels.map((channel) => ({ ...channel, quantity: "sound" })) }));
  expect(sound.verdict).toMatchObject({ part: "propeller-shaft", order: 1 });
  expect(of(sound, "propeller-shaft", 1)?.amplitudes).toEqual([null]);
  expect(codes(sound)).toContain("attribution.sound-only");
});

test("three axes count together, and the strongest is named", async () => {
  const result = must(
    await attribute(recorded({ axes: 3, sources: [{ ...shake("propeller-shaft", 2), gains: [0.2, 0, 1] }], roadNoise: 0.7 })),
  );
  expect(result.strongest).toBe(2);
  const values = of(result, "propeller-shaft", 2)?.amplitudes ?? [];
  expect(values.map((a, i) => a !== null && a.low <= ([0.2, 0, 1][i] as number) && a.high >= ([0.2, 0, 1][i] as number))).toEqual([
    true,
    true,
    true,
  ]);
});

test("refuses what cannot be worked on", async () => {
  const input = recorded();
  const [channel] = input.channels as [(typeof input.channels)[number]];
  const samples = (length: number, value: number, rate = 1024) => ({
    ...channel,
    samples: readerOf({ samples: new Float64Array(length).fill(value), rate, start: 0 }),
  });
  const code = async (change: Partial<typeof input>): Promise<unknown> => {
    const result = await attribute({ ...input, ...change });
    return result.ok ? "ok" : result.code;
  };
  expect(await code({ channels: [] })).toBe("signal.no-samples");
  expect(await code({ channels: [samples(60 * 1024, 0)] })).toBe("signal.no-samples");
  expect(await code({ channels: [samples(60 * 1024, Number.NaN)] })).toBe("signal.not-finite");
  expect(await code({ channels: [samples(100, 1)] })).toBe("signal.too-short");
  expect(await code({ channels: [samples(60 * 1024, 1, 0)] })).toBe("signal.bad-rate");
  expect(await code({ channels: [channel, samples(20, 1)] })).toBe("signal.lengths-differ");
  expect(await code({ channels: [samples(600, 1, 10)] })).toBe("attribution.no-orders");
});

test("tells how far it is, lets others run, and stops when asked", async () => {
  const shares: number[] = [];
  let pauses = 0;
  const pause = async (): Promise<void> => void pauses++;
  const result = await attribute(recorded({}, "log"), { onProgress: (share) => void shares.push(share), pause });
  expect(result.ok).toBe(true);
  expect(shares.every((share, i) => share <= 1 && share >= (shares[i - 1] ?? 0) - 1e-9)).toBe(true);
  expect(pauses).toBe(shares.length);
  const stopped = {
    throwIfAborted: () => {
      throw new Error("stopped");
    },
  };
  await expect(attribute(recorded(), { signal: stopped })).rejects.toThrow("stopped");
  const first = attributionSteps(recorded()).next();
  expect(first.done).toBe(false);
});
