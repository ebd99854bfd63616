import { expect, test } from "vitest";
import { normalDeviates, uniformDeviates } from "../uncertainty/index.js";
import { amplitudeOf, meanSquareOf, type NoisyBlock } from "./line-amplitude.js";

const block = (cosine: number, sine: number, variance: number): NoisyBlock => ({
  amplitude: { cosine, sine, unitCovariance: [1, 0, 1] },
  noise: { variance, freedom: 1000 },
});

test("without noise it is the root mean square of the blocks' amplitudes, for certain", () => {
  const { value, u, low, high } = amplitudeOf(meanSquareOf([block(3, 4, 0), block(0, 1, 0)]));
  expect(Math.abs(value - Math.sqrt(13))).toBeLessThan(1e-12);
  expect([u, low, high]).toEqual([0, value, value]);
});

test("holds the truth in some 95 of 100 from three u on, in 93 or more nearer to zero, where it begins at zero", () => {
  const normal = normalDeviates(uniformDeviates(11));
  const TRIALS = 4000;
  for (const truth of [0, 0.3, 1, 2, 4, 8]) {
    let [held, fromZero] = [0, 0];
    for (let trial = 0; trial < TRIALS; trial++) {
      const blocks = Array.from({ length: 6 }, () => block(truth + normal(), normal(), 1));
      const { low, high } = amplitudeOf(meanSquareOf(blocks));
      if (low <= truth && truth <= high) held++;
      if (low === 0) fromZero++;
    }
    const share = held / TRIALS;
    expect(share).toBeGreaterThan(0.93);
    if (truth >= 2) expect(share).toBeLessThan(0.97);
    if (truth === 0) expect(fromZero / TRIALS).toBeGreaterThan(0.95);
  }
});
