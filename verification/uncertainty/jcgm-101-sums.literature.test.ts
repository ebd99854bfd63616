import { type Distribution, monteCarlo, normal, propagate, rectangular, standardUncertainty } from "@halfturn/engine/uncertainty";
import { test } from "vitest";
import { DRAWS, expectWithin, halfUnit, ofDeviation, ofMean, ofQuantile } from "./expect-within.js";

// JCGM 101:2008, 9.2: the additive model Y = X1 + X2 + X3 + X4 with normal and rectangular inputs of mean 0.
// 9.2.2 and 9.2.3 as repeated in the open tests of a national laboratory's calculator, 9.2.4 from memory; exact where a closed form exists.

const sum = (x: Float64Array): number => x.reduce((total, value) => total + value, 0);
const rectangularOf = (u: number): Distribution => rectangular(0, u * Math.sqrt(3));
/** What the first-order framework multiplies u by for 95 % of a normal. */
const NORMAL_95 = 1.959964;

interface Case {
  readonly inputs: readonly Distribution[];
  readonly u: number;
  readonly printedU: readonly [value: number, lastDigit: number];
  readonly halfWidth: readonly [value: number, lastDigit: number];
  readonly firstOrder: readonly [value: number, lastDigit: number];
  /** Density of Y at the end of the interval: normal; the cubic tail of four rectangles; three beside one wide rectangle. */
  readonly densityAtEnd: number;
}

const cases: readonly (readonly [string, Case])[] = [
  [
    "9.2.2, four normals",
    {
      inputs: Array(4).fill(normal(0, 1)),
      u: 2,
      printedU: [2, 0.1],
      halfWidth: [3.92, 0.01],
      firstOrder: [3.92, 0.01],
      densityAtEnd: 0.0292,
    },
  ],
  [
    "9.2.3, four rectangles",
    // (4 sqrt 3 - 3.8794)^3 / (6 (2 sqrt 3)^4)
    {
      inputs: Array(4).fill(rectangularOf(1)),
      u: 2,
      printedU: [2, 0.1],
      halfWidth: [3.88, 0.01],
      firstOrder: [3.92, 0.01],
      densityAtEnd: 0.0328,
    },
  ],
  [
    "9.2.4, three rectangles and one ten times as wide (from memory)",
    {
      inputs: [rectangularOf(1), rectangularOf(1), rectangularOf(1), rectangularOf(10)],
      u: Math.sqrt(103),
      printedU: [10.1, 0.1],
      halfWidth: [17, 0.1],
      firstOrder: [19.9, 0.1],
      // At 17.0 the wide rectangle, of density 1/(20 sqrt 3), has lost the share of a normal of u sqrt 3 beyond 0.32.
      densityAtEnd: 0.0165,
    },
  ],
];

for (const [name, { inputs, u, printedU, halfWidth, firstOrder, densityAtEnd }] of cases) {
  const simulated = monteCarlo({ inputs, model: sum, draws: DRAWS, seed: 101 });
  const propagated = propagate({ inputs: inputs.map((input) => ({ value: input.value, u: standardUncertainty(input) })), model: sum });
  const ofEnd = halfUnit(halfWidth[1]) + ofQuantile(0.025, densityAtEnd);
  test.each([
    ["mean", simulated.mean, 0, ofMean(u)],
    ["standard deviation", simulated.standardDeviation, u, ofDeviation(u)],
    ["printed standard deviation", simulated.standardDeviation, printedU[0], halfUnit(printedU[1]) + ofDeviation(u)],
    ["low end, symmetric", simulated.symmetric.low, -halfWidth[0], ofEnd],
    ["high end, symmetric", simulated.symmetric.high, halfWidth[0], ofEnd],
    ["half the width of the shortest", (simulated.shortest.high - simulated.shortest.low) / 2, halfWidth[0], ofEnd],
    ["first-order u", propagated.u, u, 1e-9],
    ["first-order half width", propagated.u * NORMAL_95, firstOrder[0], halfUnit(firstOrder[1])],
  ])(`${name}: %s`, (_, actual, published, tolerance) => expectWithin(actual, published, tolerance));
}
