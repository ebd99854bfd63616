/** The frame a vector is written in. `chain`: X horizontal along the power flow, Z up, Y = Z x X. `vehicle`: X forward, Y left, Z up (ISO 8855). */
export type Frame = "chain" | "vehicle";

/** A vector of three components in a named frame; mixing frames does not compile. */
export interface Vec3<F extends Frame = "chain"> {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly __frame?: F;
}

/** A vector from its components, all of one unit; the frame is the type's. */
export const vec3 = <F extends Frame = "chain">(x: number, y: number, z: number): Vec3<F> => ({ x, y, z });

/** Scalar product, in the product of the units of a and b. */
export const dot = <F extends Frame>(a: Vec3<F>, b: Vec3<F>): number => a.x * b.x + a.y * b.y + a.z * b.z;

/** Right-handed cross product. */
export const cross = <F extends Frame>(a: Vec3<F>, b: Vec3<F>): Vec3<F> =>
  vec3(a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x);

/** a + b, component by component. */
export const add = <F extends Frame>(a: Vec3<F>, b: Vec3<F>): Vec3<F> => vec3(a.x + b.x, a.y + b.y, a.z + b.z);
/** a - b, component by component. */
export const subtract = <F extends Frame>(a: Vec3<F>, b: Vec3<F>): Vec3<F> => vec3(a.x - b.x, a.y - b.y, a.z - b.z);
/** a times a plain number; a negative one turns it round. */
export const scale = <F extends Frame>(a: Vec3<F>, factor: number): Vec3<F> => vec3(a.x * factor, a.y * factor, a.z * factor);
/** Euclidean length, >= 0, in the unit of the components; no overflow for any finite ones. */
export const length = <F extends Frame>(a: Vec3<F>): number => Math.hypot(a.x, a.y, a.z);
