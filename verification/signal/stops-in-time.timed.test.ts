import { type AttributionInput, attribute, attributionSteps } from "@halfturn/engine/attribution";
import { orderMapsSteps, type SampleReader, shaftAngleFromPulses } from "@halfturn/engine/signal";
import { uniformDeviates } from "@halfturn/engine/uncertainty";
import { expect, test } from "vitest";
import { must } from "./finish.js";
import { randomParts } from "./random-road-test.js";

/** Agreed: long work stops within 100 ms. Every piece must be shorter; the median is taken as well, since a busy machine can hold up any one of them. */
const LONGEST = 100;
const MEDIAN = 40;
const RATE = 4096;
const SECONDS = 3600;

/** An hour that is made as it is read, so that whatever memory the work takes is its own. */
function hour(shift: number): SampleReader {
  return {
    rate: RATE,
    start: 0,
    length: SECONDS * RATE,
    read: (first, out) => {
      for (let n = 0; n < out.length; n++) {
        const k = first + n;
        out[n] = Math.sin(0.11 * k + shift) + ((k * 7919) % 1013) / 1013;
      }
    },
  };
}

/** A shaft of 30 to 40 turns a second. */
const pulses = (() => {
  const times: number[] = [];
  for (let t = 0; t < SECONDS; t += 1 / (35 + 5 * Math.sin(t / 50))) times.push(t);
  return Float64Array.from(times);
})();

const { parts } = randomParts(uniformDeviates(3), { gearRatio: null, axleRatio: 3.73 });
const input: AttributionInput = {
  channels: [0, 1, 2].map((shift) => ({ samples: hour(shift), quantity: "acceleration", fullScale: null })),
  reference: { angle: must(shaftAngleFromPulses(pulses, 1)).angle, perWheelTurn: 3.73, looseness: 0 },
  parts,
  filter: null,
};

function piecesOf(steps: Iterator<unknown>, most: number): readonly number[] {
  const pieces: number[] = [];
  for (let done = false; !done && pieces.length < most; ) {
    const started = performance.now();
    done = steps.next().done ?? false;
    pieces.push(performance.now() - started);
  }
  return pieces.sort((a, b) => a - b);
}

test("an hour of three axes comes in pieces short enough to be stopped within 100 ms, and holds no more for being long", () => {
  const loose = { ...input, reference: { ...input.reference, looseness: 0.01 } };
  const map = { turns: 32, highestOrder: 6, rows: 1000 };
  const readers = input.channels.map(({ samples }) => samples);
  const before = process.memoryUsage().arrayBuffers;
  for (const steps of [attributionSteps(input), attributionSteps(loose), orderMapsSteps(readers, input.reference.angle, map)]) {
    const pieces = piecesOf(steps, 1500);
    expect(pieces.length).toBeGreaterThan(200);
    expect(pieces[pieces.length >> 1]).toBeLessThan(MEDIAN);
    // One piece in fifty may fall to a neighbour on the machine.
    expect(pieces[Math.floor(0.98 * pieces.length)]).toBeLessThan(LONGEST);
  }
  // The recording itself would be 354 MB; what was read and let go of is not collected at once.
  expect((process.memoryUsage().arrayBuffers - before) / 1e6).toBeLessThan(250);
});

test("stops with the reason of whoever stops it", async () => {
  const stop = new AbortController();
  let shares = 0;
  const onProgress = (): void => {
    if (++shares === 5) stop.abort(new Error("enough"));
  };
  await expect(attribute(input, { signal: stop.signal, onProgress })).rejects.toThrow("enough");
  expect(shares).toBe(5);
});
