import fc from "fast-check";
import { expect, test } from "vitest";
import { propagate, propagateVector } from "./propagation.js";

/** A linear model of few, plain terms: only the rounding of a central difference is left, some 2^-52 / 2^-10. */
const LINEAR = 1e-9;
/** Random linear models: values up to 3000 round by 4e-13, beside a step of no less than 1e-4. */
const LINEAR_ABSOLUTE = 1e-8;
/** Central differences at a step of 2^-10 u: a relative error of f'''u^2/(6 f') 2^-20 for models that bend gently. */
const GENTLE = 1e-6;

const within = (actual: number, expected: number, tolerance: number, scale = Math.abs(expected)): void =>
  expect(Math.abs(actual - expected), `${actual} for ${expected}`).toBeLessThanOrEqual(tolerance * (scale || 1));

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

const terms = fc.array(
  fc.record({
    value: fc.double({ min: -100, max: 100, noNaN: true }),
    u: fc.double({ min: 0.1, max: 10, noNaN: true }),
    factor: fc.double({ min: -5, max: 5, noNaN: true }),
  }),
  { minLength: 1, maxLength: 6 },
);

test("a linear model is exact: value, sensitivities, root sum of squares, shares", () => {
  fc.assert(
    fc.property(terms, (inputs) => {
      const model = (x: Float64Array): number => inputs.reduce((sum, { factor }, i) => sum + factor * (x[i] as number), 7);
      const result = propagate({ inputs, model });
      expect(result.value).toBe(model(Float64Array.from(inputs, ({ value }) => value)));
      for (const [i, { factor }] of inputs.entries()) within(result.sensitivities[i] as number, factor, LINEAR_ABSOLUTE, 1);
      const variance = inputs.reduce((sum, { factor, u }) => sum + (factor * u) ** 2, 0);
      const total = inputs.reduce((sum, { u }) => sum + u, 0);
      within(result.u, Math.sqrt(variance), LINEAR_ABSOLUTE, total);
      if (result.u > 0) within(sumOf(result.contributions), 1, LINEAR);
    }),
  );
});

test("correlated inputs: fully correlated add, fully opposed cancel", () => {
  const inputs = [
    { value: 1, u: 0.3 },
    { value: 2, u: 0.4 },
  ];
  const sum = (x: Float64Array): number => (x[0] as number) + (x[1] as number);
  const together = (r: number) =>
    propagate({
      inputs,
      model: sum,
      correlation: [
        [1, r],
        [r, 1],
      ],
    });
  within(together(1).u, 0.7, LINEAR);
  within(together(0).u, 0.5, LINEAR);
  within(together(-1).u, 0.1, 10 * LINEAR);
  within(together(-1).contributions[0] as number, (0.3 * -0.1) / 0.01, 10 * LINEAR);
  within(together(0).contributions[1] as number, 0.64, LINEAR);
});

test("outputs of shared inputs: sum and difference of equals are uncorrelated, copies fully correlated", () => {
  const { covariance, correlation } = propagateVector({
    inputs: [
      { value: 3, u: 0.2 },
      { value: 4, u: 0.2 },
    ],
    outputs: 4,
    model: (x, y) => {
      const [a, b] = x as unknown as [number, number];
      y.set([a + b, a - b, -2 * (a + b), 5]);
    },
  });
  within(covariance[0]?.[0] as number, 0.08, LINEAR);
  within(correlation[0]?.[1] as number, 0, LINEAR);
  within(correlation[0]?.[2] as number, -1, LINEAR);
  expect(correlation[0]?.[3]).toBe(0);
  expect(covariance).toEqual(covariance.map((_, k) => covariance.map((row) => row[k])));
});

test("sensitivities agree with analytic derivatives, for uncertainties from a millionth to a tenth of the value", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.2, max: 1.3, noNaN: true }),
      fc.double({ min: 1, max: 50, noNaN: true }),
      fc.constantFrom(1e-6, 1e-3, 0.1),
      (angle, length, relative) => {
        const [byAngle, byLength] = propagate({
          inputs: [
            { value: angle, u: angle * relative },
            { value: length, u: length * relative },
          ],
          model: (x) => (x[1] as number) ** 2 * Math.sin(x[0] as number),
        }).sensitivities as [number, number];
        within(byAngle, length ** 2 * Math.cos(angle), GENTLE);
        within(byLength, 2 * length * Math.sin(angle), GENTLE);
      },
    ),
  );
});

test("an exact input still has its sensitivity and no share", () => {
  const { u, sensitivities, contributions } = propagate({ inputs: [{ value: 0, u: 0 }], model: (x) => Math.sin(x[0] as number) });
  expect([u, contributions]).toEqual([0, [0]]);
  within(sensitivities[0] as number, 1, GENTLE);
});

test("a correlation of the wrong size is refused", () => {
  expect(() => propagate({ inputs: [{ value: 0, u: 1 }], correlation: [[1, 0]], model: () => 0 })).toThrow(RangeError);
});
