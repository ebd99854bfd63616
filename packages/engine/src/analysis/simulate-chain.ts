import { type EvaluateQuantities, magnitudeOf, quantityIndex } from "./chain-quantities.js";
import { poseReader } from "./pose-draws.js";

/** A covariance to half a percent is all that asking for zero in its ellipse needs. */
const COVARIANCE_DRAWS = 50_000;

/** Second moments of a plane vector about its mean. */
export interface PlaneCovariance {
  readonly xx: number;
  readonly xy: number;
  readonly yy: number;
}

/** What many draws say about every quantity of a chain; places as in `quantityIndex`. */
export interface ChainSample {
  /** [place][draw], on the scale of `magnitudeOf`. */
  readonly magnitudes: readonly Float64Array[];
  readonly covariances: readonly PlaneCovariance[];
}

/** Evaluates all quantities of a chain of n joints for `draws` drawn poses (JCGM 101:2008, 7). */
export function simulateChain(n: number, evaluate: EvaluateQuantities, next: () => Float64Array, draws: number): ChainSample {
  const { count } = quantityIndex(n);
  const posesFrom = poseReader(n + 1);
  const out = new Float64Array(2 * count);
  const first = new Float64Array(2 * count);
  const sums = new Float64Array(5 * count);
  const magnitudes = Array.from({ length: count }, () => new Float64Array(draws));
  const counted = Math.min(draws, COVARIANCE_DRAWS);
  for (let draw = 0; draw < draws; draw++) {
    evaluate(posesFrom(next()), out);
    if (draw === 0) first.set(out);
    for (let place = 0; place < count; place++) {
      (magnitudes[place] as Float64Array)[draw] = magnitudeOf(n, place, out);
    }
    for (let place = 0; draw < counted && place < count; place++) {
      // Moments about the first draw lose no digits to a mean far from zero.
      const x = (out[2 * place] as number) - (first[2 * place] as number);
      const y = (out[2 * place + 1] as number) - (first[2 * place + 1] as number);
      const at = 5 * place;
      sums[at] = (sums[at] as number) + x;
      sums[at + 1] = (sums[at + 1] as number) + y;
      sums[at + 2] = (sums[at + 2] as number) + x * x;
      sums[at + 3] = (sums[at + 3] as number) + x * y;
      sums[at + 4] = (sums[at + 4] as number) + y * y;
    }
  }
  const covariances = magnitudes.map((_, place): PlaneCovariance => {
    const [sx, sy, sxx, sxy, syy] = Array.from(sums.subarray(5 * place, 5 * place + 5), (sum) => sum / counted) as [
      number,
      number,
      number,
      number,
      number,
    ];
    return { xx: sxx - sx * sx, xy: sxy - sx * sy, yy: syy - sy * sy };
  });
  return { magnitudes, covariances };
}
