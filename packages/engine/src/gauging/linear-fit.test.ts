import fc from "fast-check";
import { expect, test } from "vitest";
import { fitLinear } from "./linear-fit.js";

const ROUNDING = 1e-10;
const near = (actual: number | undefined, expected: number) => expect(Math.abs((actual ?? Number.NaN) - expected)).toBeLessThan(ROUNDING);

test("one unknown: the weighted mean, its residuals and redundancy numbers", () => {
  const fit = fitLinear([
    { row: [1], value: 1, u: 1 },
    { row: [1], value: 4, u: 2 },
  ]);
  near(fit.estimate[0], 1.6);
  near(fit.gain[0]?.[0], 0.8);
  near(fit.residuals[0], -0.6);
  near(fit.residuals[1], 1.2);
  near(fit.misfit, 1.8);
  near(fit.residualMaker[0]?.[0], 0.2);
  near(fit.residualMaker[1]?.[1], 0.8);
});

test("a straight line through three points, by the normal equations by hand", () => {
  const fit = fitLinear([0, 1, 2].map((x, k) => ({ row: [1, x], value: [1, 2, 2][k] as number, u: 1 })));
  near(fit.estimate[0], 7 / 6);
  near(fit.estimate[1], 1 / 2);
  near(fit.misfit, 1 / 6);
});

test("unknowns that the equations leave open are told apart, however many equations there are", () => {
  expect(fitLinear([{ row: [1, 1, 0], value: 3, u: 0.1 }]).known).toEqual([false, false, false]);
  const sums = [1, 1].map((sign) => ({ row: [1, sign, 0], value: 3, u: 0.1 }));
  expect(fitLinear([...sums, { row: [1, -1, 0], value: 1, u: 0.3 }]).known).toEqual([true, true, false]);
});

test("the residual maker is symmetric, idempotent, and as large as the redundancy", () => {
  const row = fc.array(fc.integer({ min: -1, max: 1 }), { minLength: 3, maxLength: 3 });
  const u = fc.double({ min: 0.05, max: 2, noNaN: true });
  const equations = fc.array(fc.record({ row, value: fc.double({ min: -1, max: 1, noNaN: true }), u }), { minLength: 1, maxLength: 7 });
  fc.assert(
    fc.property(equations, (list) => {
      fc.pre(list.some(({ row: entries }) => entries.some((entry) => entry !== 0)));
      const { residualMaker, residuals } = fitLinear(list);
      const at = (i: number, j: number) => residualMaker[i]?.[j] ?? 0;
      const places = list.map((_, k) => k);
      for (const i of places) {
        near(
          places.reduce((sum, k) => sum + at(i, k) * (residuals[k] ?? 0), 0),
          residuals[i] ?? 0,
        );
        for (const j of places) {
          near(at(i, j), at(j, i));
          near(
            places.reduce((sum, k) => sum + at(i, k) * at(k, j), 0),
            at(i, j),
          );
        }
      }
      const trace = places.reduce((sum, k) => sum + at(k, k), 0);
      near(trace, Math.round(trace));
    }),
    { seed: 4, numRuns: 200 },
  );
});
