import fc from "fast-check";
import { expect, test } from "vitest";
import { quantiles, shortestInterval, symmetricInterval } from "./quantile.js";

/** A sort puts -0 before 0, a comparison takes them for one value: adding 0 makes them one. */
const value = fc.double({ min: -1e6, max: 1e6, noNaN: true }).map((drawn) => drawn + 0);
const samples = fc.array(value, { minLength: 40, maxLength: 3000 });
/** Few different values, so that ties are the rule. */
const tiedSamples = fc.array(fc.integer({ min: 0, max: 5 }), { minLength: 40, maxLength: 500 });
const eitherSample = fc.oneof(samples, tiedSamples);
const coverages = fc.constantFrom(0.3, 0.5, 0.6827, 0.9, 0.95);

const ordered = (values: readonly number[]): Float64Array => Float64Array.from(values).sort();
const spanOf = (size: number, coverage: number): number => Math.floor(coverage * size + 0.5 + 1e-9);

test("quantiles are the values that a full sort puts at their rank, in the order asked for", () => {
  fc.assert(
    fc.property(eitherSample, fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 1, maxLength: 6 }), (values, permilles) => {
      const sorted = ordered(values);
      const expected = permilles.map((m) => sorted[Math.max(0, Math.ceil((m * sorted.length) / 1000) - 1)]);
      expect(
        quantiles(
          Float64Array.from(values),
          permilles.map((m) => m / 1000),
        ),
      ).toEqual(expected);
    }),
  );
});

test("the symmetric interval leaves as many values below as above, to one", () => {
  fc.assert(
    fc.property(eitherSample, coverages, (values, coverage) => {
      const sorted = ordered(values);
      const span = spanOf(sorted.length, coverage);
      const below = Math.floor((sorted.length - span + 1) / 2) - 1;
      expect(symmetricInterval(Float64Array.from(values), coverage)).toEqual({ low: sorted[below], high: sorted[below + span] });
      expect(Math.abs(sorted.length - 1 - (below + span) - below)).toBeLessThanOrEqual(1);
    }),
  );
});

test("no interval of the same count is shorter than the shortest", () => {
  fc.assert(
    fc.property(eitherSample, coverages, (values, coverage) => {
      const sorted = ordered(values);
      const span = spanOf(sorted.length, coverage);
      const widths = Array.from({ length: sorted.length - span }, (_, r) => (sorted[r + span] as number) - (sorted[r] as number));
      const shortest = shortestInterval(Float64Array.from(values), coverage);
      expect(shortest.high - shortest.low).toBe(Math.min(...widths));
      expect(sorted[widths.indexOf(Math.min(...widths))]).toBe(shortest.low);
    }),
  );
});

test("the worked ranks of a hundred values: 1..100 at 90 % give 5..95", () => {
  const hundred = Float64Array.from({ length: 100 }, (_, i) => 100 - i);
  expect(symmetricInterval(hundred, 0.9)).toEqual({ low: 5, high: 95 });
  expect(quantiles(hundred, [0, 0.5, 1, 0.025])).toEqual([1, 50, 100, 3]);
});

test("what cannot be answered is refused", () => {
  expect(() => quantiles(new Float64Array(0), [0.5])).toThrow(RangeError);
  expect(() => quantiles(new Float64Array(3), [1.5])).toThrow(RangeError);
  expect(() => symmetricInterval(new Float64Array(5), 0.95)).toThrow(RangeError);
  expect(() => shortestInterval(new Float64Array(500), 1)).toThrow(RangeError);
});
