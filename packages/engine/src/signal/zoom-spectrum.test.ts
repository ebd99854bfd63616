import { expect, test } from "vitest";
import { readerOf } from "./sample-reader.js";
import { must } from "./shaft-angle.test-support.js";
import { averagedSpectrum } from "./spectrum.js";
import { zoomSpectrum } from "./zoom-spectrum.js";

const RATE = 256;
/** Two tones 0.2 Hz apart over a minute, and a rough sequence. */
const samples = Float64Array.from(
  { length: 16_384 },
  (_, n) => 0.7 + 2 * Math.cos((2 * Math.PI * 41 * n) / RATE) + Math.cos((2 * Math.PI * 41.2 * n) / RATE + 1) + 0.1 * Math.sin(n * n * 0.7),
);
const reader = readerOf({ samples, rate: RATE, start: 0 });
/** A wave turned on 4,096 times. */
const ROUNDING = 1e-9;

test("on the lines of a transform of the whole it is that transform", () => {
  const whole = must(averagedSpectrum(samples, RATE, { window: "hann", blockLength: samples.length, overlap: 0, detrend: "mean" }));
  const zoom = must(zoomSpectrum(reader, { from: 40, to: 42, lines: 2 / whole.lineSpacing + 1, window: "hann" }));
  expect(Math.abs(zoom.noiseBandwidth - whole.noiseBandwidth)).toBeLessThan(ROUNDING);
  for (const [k, frequency] of zoom.frequencies.entries())
    expect(Math.abs((zoom.meanSquare[k] as number) - (whole.meanSquare[Math.round(frequency / whole.lineSpacing)] as number))).toBeLessThan(
      ROUNDING,
    );
});

test("between them it finds tones at their own places", () => {
  const { frequencies, meanSquare } = must(zoomSpectrum(reader, { from: 40.8, to: 41.4, lines: 601, window: "hann" }));
  const top = (low: number, high: number): number =>
    frequencies.reduce(
      (best, f, k) => (f >= low && f <= high && (meanSquare[k] as number) > (meanSquare[best] as number) ? k : best),
      frequencies.findIndex((f) => f >= low),
    );
  // The side lobes of the other tone, 13 lines away, move a peak by a thousandth of a hertz and its height by a hundredth.
  for (const [low, high, frequency, amplitude] of [
    [40.9, 41.1, 41, 2],
    [41.12, 41.3, 41.2, 1],
  ] as const) {
    const k = top(low, high);
    expect(Math.abs((frequencies[k] as number) - frequency)).toBeLessThan(2e-3);
    expect(Math.abs(Math.sqrt(2 * (meanSquare[k] as number)) / amplitude - 1)).toBeLessThan(0.02);
  }
});

test("a band outside the recording's is a mistake of the program, a moment too little to look at", () => {
  expect(() => zoomSpectrum(reader, { from: 10, to: 200, lines: 9, window: "hann" })).toThrow(RangeError);
  const moment = readerOf({ samples: samples.subarray(0, 3), rate: RATE, start: 0 });
  expect(zoomSpectrum(moment, { from: 1, to: 2, lines: 9, window: "hann" })).toMatchObject({ code: "signal.too-short" });
});
