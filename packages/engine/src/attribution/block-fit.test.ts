import fc from "fast-check";
import { Matrix, pseudoInverse } from "ml-matrix";
import { expect, test } from "vitest";
import { fitBlock } from "./block-fit.js";
import { waveMaker } from "./waves.js";

const LENGTH = 300;
const angles = Float64Array.from({ length: LENGTH }, (_, n) => 0.2 * n + 1e-4 * n * n);
/** The grain of 1e-10 on the diagonal, times amplitudes of 5 and an offset of 20. */
const ROUNDING = 1e-6;
/** Squares of residuals of a hundred, and the grain of 1e-10 on the diagonal. */
const LEAST_SQUARES = 1e-6;

const signal = (amplitudes: readonly (readonly [number, number, number])[], offset = 0, drift = 0) =>
  Float64Array.from(angles, (angle, n) =>
    amplitudes.reduce((sum, [order, a, b]) => sum + a * Math.cos(order * angle) + b * Math.sin(order * angle), offset + drift * n),
  );
const ORDERS = [1, 2, 3.08, 3.73];
const waves = waveMaker()(angles, ORDERS);

test("gives back what was put in, whatever offset and drift are beside it", () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.double({ min: -5, max: 5, noNaN: true }), fc.double({ min: -5, max: 5, noNaN: true })), {
        minLength: 4,
        maxLength: 4,
      }),
      fc.double({ min: -20, max: 20, noNaN: true }),
      fc.double({ min: -0.1, max: 0.1, noNaN: true }),
      (pairs, offset, drift) => {
        const [fit] = fitBlock(
          [
            signal(
              pairs.map(([a, b], i) => [ORDERS[i] as number, a, b]),
              offset,
              drift,
            ),
          ],
          waves,
        );
        for (const [i, [a, b]] of pairs.entries()) {
          expect(Math.abs((fit?.amplitudes[i]?.cosine ?? NaN) - a)).toBeLessThan(ROUNDING);
          expect(Math.abs((fit?.amplitudes[i]?.sine ?? NaN) - b)).toBeLessThan(ROUNDING);
        }
        expect(fit?.residual.every((r) => Math.abs(r) < ROUNDING)).toBe(true);
      },
    ),
    { numRuns: 30 },
  );
});

test("is the least-squares answer that a pseudo-inverse gives, for several channels at once", () => {
  const rough = [0.7, 1.3].map((k) =>
    Float64Array.from({ length: LENGTH }, (_, n) => Math.sin(k * n * n) + 2 * Math.cos(angles[n] as number)),
  );
  const columns = [
    new Float64Array(LENGTH).fill(1),
    Float64Array.from({ length: LENGTH }, (_, n) => (2 * n) / (LENGTH - 1) - 1),
    ...waves.flatMap(({ cosine, sine }) => [cosine, sine]),
  ];
  const design = new Matrix(columns.map((column) => Array.from(column))).transpose();
  const inverse = pseudoInverse(design);
  for (const [channel, fit] of fitBlock(rough, waves).entries()) {
    const solution = inverse.mmul(Matrix.columnVector(Array.from(rough[channel] as Float64Array)));
    for (const [j, { cosine, sine }] of fit.amplitudes.entries()) {
      expect(Math.abs(cosine - solution.get(2 + 2 * j, 0))).toBeLessThan(LEAST_SQUARES);
      expect(Math.abs(sine - solution.get(3 + 2 * j, 0))).toBeLessThan(LEAST_SQUARES);
    }
  }
});

test("two waves that are one share what is theirs instead of stopping the work", () => {
  const twice = waveMaker()(angles, [1, 1]);
  const [fit] = fitBlock([signal([[1, 4, 0]])], twice);
  expect(Math.abs((fit?.amplitudes[0]?.cosine ?? NaN) + (fit?.amplitudes[1]?.cosine ?? NaN) - 4)).toBeLessThan(1e-3);
});
