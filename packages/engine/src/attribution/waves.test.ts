import fc from "fast-check";
import { expect, test } from "vitest";
import { waveMaker } from "./waves.js";

/** Phases reach 6,000 rad, of which the last digit is 1e-12; a product of products adds a few of them. */
const ROUNDING = 1e-11;

test("waves are the cosines and sines of their angles, in the order asked, whether sums of one another or not", () => {
  const made = waveMaker();
  const part = fc.constantFrom(1, 0.5, 1 / 3.73, 1.388, Math.SQRT2);
  fc.assert(
    fc.property(fc.array(fc.tuple(part, fc.integer({ min: 1, max: 8 })), { minLength: 1, maxLength: 12 }), (orders) => {
      const perTurns = orders.map(([base, times]) => base * times);
      const angles = Float64Array.from({ length: 50 }, (_, n) => 5.1 * n);
      for (const [i, { cosine, sine }] of made(angles, perTurns).entries()) {
        const phases = angles.map((angle) => (perTurns[i] as number) * angle);
        const worst = phases.map((phase, n) =>
          Math.max(Math.abs((cosine[n] as number) - Math.cos(phase)), Math.abs((sine[n] as number) - Math.sin(phase))),
        );
        expect(Math.max(...worst)).toBeLessThan(ROUNDING);
      }
    }),
    { numRuns: 200 },
  );
});
