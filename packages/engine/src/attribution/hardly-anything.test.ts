import fc from "fast-check";
import { expect, test } from "vitest";
import { readerOf, shaftAngleFromSpeeds } from "../signal/index.js";
import { must } from "../signal/shaft-angle.test-support.js";
import { normalDeviates, uniformDeviates } from "../uncertainty/index.js";
import { partsOf } from "./attribution-cases.test-support.js";
import { attributionSteps } from "./index.js";

const shapes = ["noise", "step", "spike", "ramp", "tone"] as const;

function samplesOf(shape: (typeof shapes)[number], length: number, seed: number): Float64Array {
  const normal = normalDeviates(uniformDeviates(seed));
  return Float64Array.from({ length }, (_, n) => {
    if (shape === "noise") return normal();
    if (shape === "step") return n > length / 2 ? 1 : 0;
    if (shape === "spike") return n === length >> 1 ? 1e6 : 0;
    return shape === "ramp" ? n : Math.cos(0.3 * n);
  });
}

test("whatever is recorded, however short or slow, it ends with finite numbers that add up, or with a fault", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...shapes),
      fc.integer({ min: 0, max: 4000 }),
      fc.integer({ min: 5, max: 600 }),
      fc.double({ min: 0.2, max: 60, noNaN: true }),
      fc.constantFrom(0, 0.02, 0.5),
      fc.constantFrom(0, 0.08),
      fc.constantFrom(null, 30),
      (shape, length, rate, turns, looseness, slip, filter) => {
        const angle = must(
          shaftAngleFromSpeeds(Float64Array.of(-1, length / rate + 2), Float64Array.of(2 * Math.PI * turns, 3 * Math.PI * turns)),
        );
        const samples = readerOf({ samples: samplesOf(shape, length, length), rate, start: 0 });
        const steps = attributionSteps({
          channels: [{ samples, quantity: "acceleration", fullScale: null }],
          reference: { angle, perWheelTurn: 1, looseness },
          parts: partsOf({ slip }),
          filter,
        });
        for (let step = steps.next(); ; step = steps.next()) {
          if (!step.done) continue;
          if (!step.value.ok) return;
          const { contributions, noneProbability, unexplainedShare, coincidences, findings } = step.value.value;
          const sum = contributions.reduce((total, { probability }) => total + (probability ?? 0), noneProbability);
          expect(Math.abs(sum - 1)).toBeLessThan(1e-6);
          expect(unexplainedShare).toBeGreaterThanOrEqual(0);
          for (const amplitude of contributions.flatMap(({ amplitudes }) => amplitudes)) {
            if (amplitude === null) continue;
            expect([amplitude.value, amplitude.u, amplitude.low, amplitude.high].every(Number.isFinite)).toBe(true);
            expect(amplitude.low <= amplitude.value && amplitude.value <= amplitude.high).toBe(true);
          }
          const said = [...coincidences.map(({ separation }) => separation), ...findings.flatMap(({ params }) => Object.values(params))];
          expect(said.every((value) => typeof value !== "number" || Number.isFinite(value))).toBe(true);
          return;
        }
      },
    ),
    { numRuns: 60, seed: 1 },
  );
});
