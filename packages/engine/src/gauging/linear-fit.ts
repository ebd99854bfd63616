import { Matrix, SingularValueDecomposition } from "ml-matrix";

/** A weighted least-squares fit of n equations in m unknowns. */
export interface LinearFit {
  /** m values, in the unit of the unknowns; of the unknowns that the equations leave open, the shortest solution. */
  readonly estimate: readonly number[];
  /** m x n: estimate = gain . values, so that the errors of the values go the same way. */
  readonly gain: readonly (readonly number[])[];
  /** n x n, symmetric and idempotent: what the fit leaves of the equations, each divided by its u. Its diagonal holds the redundancy numbers, 0 to 1. */
  readonly residualMaker: readonly (readonly number[])[];
  /** n residuals, each divided by its u. */
  readonly residuals: readonly number[];
  /** Sum of the squared residuals above. */
  readonly misfit: number;
  /** For each unknown whether the equations tell it. */
  readonly known: readonly boolean[];
}

/** What a fit needs of an equation: row . unknowns = value, give or take u > 0. */
export interface Equation {
  readonly row: readonly number[];
  readonly value: number;
  readonly u: number;
}

/** Singular values below this share of the largest are nought: rows hold small whole numbers, so that true ones stay far above rounding. */
const RANK_TOLERANCE = 1e-9;
/** An unknown counts as told when no more than this of it lies outside the space of the equations. */
const KNOWN_TOLERANCE = 1e-9;

const dot = (a: readonly number[], b: readonly number[]): number => a.reduce((sum, value, k) => sum + value * (b[k] ?? 0), 0);

/**
 * Weighted least squares by singular values, which also tells what cannot be known.
 * equations: n >= 1 of them with rows of equal length m; u in the unit of value. Exact values give exact unknowns, to rounding.
 * Source: G. H. Golub and C. F. Van Loan, Matrix Computations, section 5.5 (from memory); redundancy numbers after W. Baarda, 1968 (from memory).
 */
export function fitLinear(equations: readonly Equation[]): LinearFit {
  const whitened = new Matrix(equations.map(({ row, u }) => row.map((entry) => entry / u)));
  const values = equations.map(({ value }) => value);
  const whitenedValues = equations.map(({ value, u }) => value / u);
  const svd = new SingularValueDecomposition(whitened, { autoTranspose: true });
  const singular = svd.diagonal;
  const kept = singular.flatMap((s, k) => (s > RANK_TOLERANCE * Math.max(...singular) ? [k] : []));
  const left = kept.map((k) => svd.leftSingularVectors.getColumn(k));
  const right = kept.map((k) => svd.rightSingularVectors.getColumn(k));
  const gain = Array.from({ length: whitened.columns }, (_, p) =>
    equations.map(({ u }, i) =>
      kept.reduce((sum, k, j) => sum + ((right[j]?.[p] ?? 0) * (left[j]?.[i] ?? 0)) / ((singular[k] as number) * u), 0),
    ),
  );
  const residualMaker = equations.map((_, i) =>
    equations.map((__, j) => left.reduce((rest, column) => rest - (column[i] as number) * (column[j] as number), i === j ? 1 : 0)),
  );
  const residuals = residualMaker.map((row) => dot(row, whitenedValues));
  return {
    estimate: gain.map((row) => dot(row, values)),
    gain,
    residualMaker,
    residuals,
    misfit: dot(residuals, residuals),
    known: gain.map((_, p) => right.reduce((rest, column) => rest - (column[p] as number) ** 2, 1) < KNOWN_TOLERANCE),
  };
}
