import { EigenvalueDecomposition, Matrix } from "ml-matrix";
import type { GeometrySource } from "../geometry/geometry-source.js";
import type { Quantities } from "../geometry/record.js";
import type { LearnedGeometry } from "./learned-geometry.js";

/** What identifies a source. */
export const sourceKey = ({ path, of }: { readonly path: string; readonly of: string }): string => `${path} ${of}`;

/** Puts the learned shifts into the best estimates. */
export function shiftQuantities(all: readonly Quantities[], sources: readonly GeometrySource[], learned: LearnedGeometry): void {
  for (const { path, of, shift } of learned.parameters) {
    sources.find((source) => sourceKey(source) === sourceKey({ path, of }))?.apply(all, shift);
  }
}

/**
 * The error sources with the learned ones in place of the tape's own. The learned parameters hang together, so their joint error is given as independent
 * sources along the eigenvectors of its covariance.
 */
export function learnedSources(sources: readonly GeometrySource[], learned: LearnedGeometry): readonly GeometrySource[] {
  const known = learned.parameters.map((parameter) => sources.find((source) => sourceKey(source) === sourceKey(parameter)) ?? null);
  const kept = sources.filter((source) => !known.includes(source));
  if (learned.parameters.length === 0) return kept;
  // Parameters of different units are scaled by their own uncertainty first, so that no unit weighs more than another.
  const scale = learned.parameters.map(({ u }) => (u > 0 ? u : 1));
  const scaled = new Matrix(
    learned.covariance.map((row, a) => row.map((value, b) => value / ((scale[a] as number) * (scale[b] as number)))),
  );
  const { realEigenvalues, eigenvectorMatrix } = new EigenvalueDecomposition(scaled, { assumeSymmetric: true });
  const joint = realEigenvalues.map(
    (value, k): GeometrySource => ({
      of: `learned:${k + 1}`,
      path: learned.parameters[0]?.path ?? "",
      origin: "tape",
      shape: "normal",
      u: Math.sqrt(Math.max(0, value)),
      assumed: true,
      apply: (all, error) => {
        known.forEach((source, row) => {
          source?.apply(all, error * eigenvectorMatrix.get(row, k) * (scale[row] as number));
        });
      },
    }),
  );
  return [...kept, ...joint];
}
