import { expect, test } from "vitest";
import { decimationOf, decimator } from "./decimator.js";

const RATE = 48_000;
const tone = (hertz: number, seconds = 1): Float32Array =>
  Float32Array.from({ length: RATE * seconds }, (_, k) => Math.sin((2 * Math.PI * hertz * k) / RATE));

const largest = (samples: Float32Array): number => samples.slice(100).reduce((most, x) => Math.max(most, Math.abs(x)), 0);

test("the usual rates are divided to a whole rate near 2000", () => {
  expect([48_000, 44_100, 16_000, 96_000, 1000].map((rate) => rate / decimationOf(rate))).toEqual([2000, 2100, 2000, 2000, 1000]);
});

test("what lies in the band passes, what would fold back does not", () => {
  const passed = largest(decimator(24)(tone(120)));
  expect(Math.abs(passed - 1)).toBeLessThan(0.01);
  // 1880 Hz would show at 120 Hz of 2000 samples a second; 60 dB are a thousandth.
  expect(largest(decimator(24)(tone(1880)))).toBeLessThan(0.001);
});

test("pieces of any size give the same as the whole", () => {
  const sound = tone(75);
  const whole = decimator(24)(sound);
  const inPieces = decimator(24);
  const parts: number[] = [];
  for (let at = 0; at < sound.length; at += 128) parts.push(...inPieces(sound.subarray(at, at + 128)));
  expect(parts).toEqual([...whole]);
});
