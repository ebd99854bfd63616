import { EigenvalueDecomposition, Matrix } from "ml-matrix";
import type { Deviates } from "./random.js";

/** Several input quantities that are normal together. Each row and column of `correlation` (symmetric, ones on the diagonal) is one quantity. */
export interface JointNormal {
  readonly shape: "joint-normal";
  readonly values: readonly number[];
  readonly u: readonly number[];
  readonly correlation: readonly (readonly number[])[];
}

/** Quantities that are normal together, by their estimates, standard uncertainties (each in its own unit) and correlation coefficients in [-1, 1]. */
export const jointNormal = (values: readonly number[], u: readonly number[], correlation: readonly (readonly number[])[]): JointNormal => ({
  shape: "joint-normal",
  values,
  u,
  correlation,
});

/** An eigenvalue this near zero is zero but for rounding: the terms of a correlation are of order one. */
const EIGENVALUE_ROUNDING = 1e-12;

/**
 * Draws of quantities that are normal together: `draw(out, at)` writes one set from out[at] on.
 * Throws RangeError when the shapes differ or the correlation is no correlation matrix.
 * Source: JCGM 101:2008, 6.4.8; by the eigenvectors of the correlation, which unlike a Cholesky factor serve a singular one too.
 */
export function jointNormalSampler(quantities: JointNormal, standardNormal: Deviates): (out: Float64Array, at: number) => void {
  const { values, u } = quantities;
  const size = values.length;
  const factor = factorOf(quantities);
  const deviates = new Float64Array(size);
  return (out, at) => {
    for (let k = 0; k < size; k++) deviates[k] = standardNormal();
    for (let i = 0; i < size; i++) {
      let sum = 0;
      for (let k = 0; k < size; k++) sum += (factor[i * size + k] as number) * (deviates[k] as number);
      out[at + i] = (values[i] as number) + (u[i] as number) * sum;
    }
  };
}

/** The row-major matrix F with F F^T = correlation. */
function factorOf({ values, u, correlation }: JointNormal): Float64Array {
  const size = values.length;
  const fits = u.length === size && correlation.length === size && correlation.every((row, i) => row.length === size && row[i] === 1);
  const matrix = fits && size > 0 ? new Matrix(correlation as number[][]) : null;
  if (matrix === null || !matrix.isSymmetric()) throw new RangeError("a correlation must be square, symmetric and one on its diagonal");
  const { realEigenvalues, eigenvectorMatrix } = new EigenvalueDecomposition(matrix, { assumeSymmetric: true });
  if (realEigenvalues.some((eigenvalue) => eigenvalue < -EIGENVALUE_ROUNDING)) throw new RangeError("a correlation must not be indefinite");
  const spread = realEigenvalues.map((eigenvalue) => (eigenvalue < EIGENVALUE_ROUNDING ? 0 : eigenvalue));
  const factor = new Float64Array(size * size);
  for (let i = 0; i < size; i++) {
    for (let k = 0; k < size; k++) factor[i * size + k] = eigenvectorMatrix.get(i, k) * Math.sqrt(spread[k] as number);
  }
  return factor;
}
