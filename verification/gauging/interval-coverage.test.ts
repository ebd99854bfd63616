import { fuseGauging, type PoseModel } from "@halfturn/engine/gauging";
import { uniformDeviates } from "@halfturn/engine/uncertainty";
import { expect, test } from "vitest";
import { LAYOUTS, type Layout } from "./layouts.js";
import { drawTruth, drivelineOf, gaugingOf, readSpot, realPlacing } from "./simulate-gauging.js";

/** A share of 95 % of 2,500 has a standard error of 0.44 %: the bounds of 93 and 97 % lie four and a half of them away. */
const SETS = 2_500;
const DRAWS = 20_000;
const COVERAGE = [0.93, 0.97] as const;

/** Half width of the 95 % interval of every inclination: draws of the error sources, symmetric about the estimate. */
function halfWidths(model: PoseModel, seed: number): readonly number[] {
  const uniform = uniformDeviates(seed);
  const sizes = model.shafts.map(() => new Float64Array(DRAWS));
  for (let d = 0; d < DRAWS; d++) {
    const errors = model.sources.map(({ u }) => Math.sqrt(3) * u * (2 * uniform() - 1));
    model.inclinationBy.forEach((row, s) => {
      (sizes[s] as Float64Array)[d] = Math.abs(row.reduce((sum, by, k) => sum + by * (errors[k] ?? 0), 0));
    });
  }
  return sizes.map((size) => size.sort()[Math.ceil(0.95 * DRAWS) - 1] as number);
}

/** How often each shaft's true inclination lies in its 95 % interval, over gaugings with true rounding. */
function coverage(layout: Layout, seed: number): readonly number[] {
  const uniform = uniformDeviates(seed);
  const placing = realPlacing(layout, uniform);
  const gaugeOnce = () => {
    const truth = drawTruth(layout, uniform);
    const values = layout.spots.map((spot) => readSpot(spot, truth, placing));
    return { truth, model: fuseGauging(gaugingOf(layout, values, truth, placing, uniform), drivelineOf(layout)) };
  };
  // The law of errors hangs on where the gauge was put, not on what it showed.
  const widths = halfWidths(gaugeOnce().model, seed);
  const within = layout.shafts.map(() => 0);
  for (let k = 0; k < SETS; k++) {
    const { truth, model } = gaugeOnce();
    layout.shafts.forEach((shaft, s) => {
      const error = (model.inclination[s] as number) - (truth.inclination[shaft] as number);
      if (Math.abs(error) <= (widths[s] as number)) within[s] = (within[s] as number) + 1;
    });
  }
  return within.map((count) => count / SETS);
}

const TRIED = LAYOUTS.filter(({ name }) => name.startsWith("one-piece") || name.startsWith("three-piece, both sides"));

test.each(TRIED.map((layout, k) => [layout.name, layout, 100 + k] as const))("%s", { timeout: 60_000 }, (_, layout, seed) => {
  for (const share of coverage(layout, seed)) {
    expect(share).toBeGreaterThanOrEqual(COVERAGE[0]);
    expect(share).toBeLessThanOrEqual(COVERAGE[1]);
  }
});
