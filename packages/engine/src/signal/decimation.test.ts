import { expect, test } from "vitest";
import { decimated } from "./decimation.js";
import { readerOf } from "./sample-reader.js";

const RATE = 4096;
/** The filter's own promise: 80 dB. */
const RIPPLE = 1.2e-4;
const tone = (hertz: number, phase = 0) => ({
  samples: Float64Array.from({ length: 8192 }, (_, n) => Math.cos((2 * Math.PI * hertz * n) / RATE + phase)),
  rate: RATE,
  start: 3,
});
const all = (reader: ReturnType<typeof decimated>): Float64Array => {
  const out = new Float64Array(reader.length);
  reader.read(0, out);
  return out;
};

test("tones below a quarter of the new rate keep amplitude, phase and time", () => {
  for (const factor of [2, 4, 7]) {
    for (const hertz of [0, 10, RATE / factor / 4]) {
      const fewer = decimated(readerOf(tone(hertz, 0.4)), factor);
      const worst = all(fewer).reduce((most, x, k) => {
        const time = fewer.start + k / fewer.rate - 3;
        return Math.max(most, Math.abs(x - Math.cos(2 * Math.PI * hertz * time + 0.4)));
      }, 0);
      expect(worst).toBeLessThan(RIPPLE);
    }
  }
});

test("tones that would fold back below a quarter of the new rate are gone", () => {
  for (const hertz of [800, 1024, 1500]) {
    const strongest = all(decimated(readerOf(tone(hertz)), 4)).reduce((most, x) => Math.max(most, Math.abs(x)), 0);
    expect(strongest).toBeLessThan(RIPPLE);
  }
});

test("a filter told what to pass and where to stop does so", () => {
  const passing = { pass: 200, stop: 500 };
  const strongest = (hertz: number): number =>
    all(decimated(readerOf(tone(hertz, 0.4)), 2, passing)).reduce((most, x) => Math.max(most, Math.abs(x)), 0);
  for (const hertz of [10, 200]) expect(Math.abs(strongest(hertz) - 1)).toBeLessThan(2 * RIPPLE);
  expect(strongest(350)).toBeGreaterThan(0.4);
  for (const hertz of [500, 700, 1024, 1900]) expect(strongest(hertz)).toBeLessThan(RIPPLE);
  expect(() => decimated(readerOf(tone(1)), 2, { pass: 300, stop: 300 })).toThrow(RangeError);
});

test("read in pieces it gives the same samples, and a recording shorter than the filter none", () => {
  const fewer = decimated(readerOf(tone(33)), 3);
  const piece = new Float64Array(100);
  fewer.read(57, piece);
  expect(piece).toEqual(all(fewer).subarray(57, 157));
  expect(decimated(readerOf({ samples: new Float64Array(20), rate: RATE, start: 0 }), 4).length).toBe(0);
  expect(() => decimated(readerOf(tone(1)), 1.5)).toThrow(RangeError);
});
