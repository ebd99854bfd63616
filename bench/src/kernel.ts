export const STEPS = 400_000;

/**
 * The yardstick: fixed floating-point work of the kind the engine does (roots, products, arc tangents on small numbers, no memory).
 * A benchmark's time divided by this one's, taken in the same second on the same machine, says how much work it is; milliseconds do not.
 */
export function calibrationKernel(steps = STEPS): number {
  let x = 0.5;
  let sum = 0;
  for (let step = 0; step < steps; step++) {
    const cosine = Math.cos(x);
    const length = Math.hypot(cosine, x * 0.3, 0.2);
    sum += Math.atan2(x, length);
    x = (x * 1.618_033_988 + 0.1) % 1.3;
  }
  return sum;
}
