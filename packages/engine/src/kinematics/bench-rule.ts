import { EigenvalueDecomposition, Matrix } from "ml-matrix";
import { directionOf, type ShaftPose } from "../geometry/index.js";
import { degreesToRadians, type Radians } from "../units/index.js";
import type { Driveline } from "./driveline.js";

/** How far a phasing may be from in line or a quarter turn, and a shaft from the common plane, before the sum of angles says nothing. Agreed design value. */
const BENCH_TOLERANCE = degreesToRadians(0.5);

/** A component of a direction below this is nought: no gauge shows it, and the decomposition takes no subnormal numbers. */
const NO_COMPONENT = 1e-12;

/** Signs of the joints in the add-and-subtract sum, or null where the rule does not apply: a joint that is no cross, a phasing neither in line nor a quarter turn. */
export function benchSigns(driveline: Driveline): readonly (1 | -1)[] | null {
  if (driveline.joints.some((joint) => joint.kind !== "cross")) return null;
  const signs: (1 | -1)[] = [1];
  for (const { phasing } of driveline.sections) {
    if (phasing === null) return null;
    const quarters = phasing / (Math.PI / 2);
    const nearest = Math.round(quarters);
    if (Math.abs(quarters - nearest) * (Math.PI / 2) > BENCH_TOLERANCE + Number.EPSILON * 8) return null;
    const previous = signs[signs.length - 1] as 1 | -1;
    signs.push((nearest % 2 === 0 ? -previous : previous) as 1 | -1);
  }
  return signs;
}

/** Largest angle of any shaft out of the least-squares plane of all shaft directions, radians in [0, pi/2]. */
export function outOfPlane(poses: readonly ShaftPose[]): Radians {
  const directions = poses.map((pose) => {
    const d = directionOf(pose);
    return [d.x, d.y, d.z].map((component) => (Math.abs(component) < NO_COMPONENT ? 0 : component));
  });
  const rows = new Matrix(directions);
  const { realEigenvalues, eigenvectorMatrix } = new EigenvalueDecomposition(rows.transpose().mmul(rows), { assumeSymmetric: true });
  const least = realEigenvalues.indexOf(Math.min(...realEigenvalues));
  const normal = eigenvectorMatrix.getColumn(least);
  const sines = directions.map((d) => Math.abs(d.reduce((sum, component, axis) => sum + component * (normal[axis] as number), 0)));
  return Math.asin(Math.min(1, Math.max(...sines))) as Radians;
}

/** Whether the shafts lie in one plane closely enough for a sum of angles. */
export const nearlyPlanar = (poses: readonly ShaftPose[]): boolean => outOfPlane(poses) <= BENCH_TOLERANCE;

/** The add-and-subtract sum of operating angles (radians), signed. Common practice, no source; the exact answer is the equivalent angle. */
export const benchSum = (signs: readonly number[], angles: readonly number[]): number =>
  signs.reduce((sum, sign, k) => sum + sign * (angles[k] as number), 0);
