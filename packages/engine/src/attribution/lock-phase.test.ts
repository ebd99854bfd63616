import { expect, test } from "vitest";
import { readerOf, shaftAngleFromSpeeds } from "../signal/index.js";
import { must } from "../signal/shaft-angle.test-support.js";
import { normalDeviates, uniformDeviates } from "../uncertainty/index.js";
import { lockPhase } from "./lock-phase.js";

const RATE = 400;
const SECONDS = 60;
const ORDER = 3.73;
/** Ten turns of the wheel a second and what a log does not know: it wanders by half a per cent. */
const wander = (t: number): number => 0.3 * Math.sin(t / 1.7) + 0.2 * Math.sin(t / 5);
const trueAngle = (t: number): number => 2 * Math.PI * 10 * t + wander(t);
const logged = must(shaftAngleFromSpeeds(Float64Array.of(0, SECONDS), Float64Array.of(20 * Math.PI, 20 * Math.PI)));
/** Noise of the order's own power over windows of 160 samples, smoothed, over the order: a fiftieth of a radian of the wheel, and what 4 turns smooth away. */
const CLOSE = 0.06;

function locked(amplitude: number) {
  const normal = normalDeviates(uniformDeviates(2));
  const samples = Float64Array.from(
    { length: RATE * SECONDS },
    (_, n) => amplitude * Math.cos(ORDER * trueAngle(n / RATE)) + Math.SQRT1_2 * normal(),
  );
  const steps = lockPhase([readerOf({ samples, rate: RATE, start: 0 })], logged, ORDER, 1);
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
}

test("the angle comes to lie where the order says, but for a constant", () => {
  const angle = locked(1);
  expect(angle).not.toBeNull();
  const errors = Array.from({ length: 50 }, (_, i) => {
    const t = 2 + i * 1.1;
    return (angle?.angleAt(t) ?? NaN) - trueAngle(t);
  });
  const mean = errors.reduce((sum, e) => sum + e / errors.length, 0);
  for (const error of errors) expect(Math.abs(error - mean)).toBeLessThan(CLOSE);
});

test("noise alone moves nothing", () => {
  expect(locked(0)).toBeNull();
});
