/** The frame a vector is written in. `chain`: X horizontal along the power flow, Z up, Y = Z x X. `vehicle`: X forward, Y left, Z up (ISO 8855). */
export type Frame = "chain" | "vehicle";

/** A vector of three components in a named frame; mixing frames does not compile. */
export interface Vec3<F extends Frame = "chain"> {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly __frame?: F;
}

export const vec3 = <F extends Frame = "chain">(x: number, y: number, z: number): Vec3<F> => ({ x, y, z });

export const dot = <F extends Frame>(a: Vec3<F>, b: Vec3<F>): number => a.x * b.x + a.y * b.y + a.z * b.z;

/** Right-handed cross product. */
export const cross = <F extends Frame>(a: Vec3<F>, b: Vec3<F>): Vec3<F> =>
  vec3(a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x);

export const add = <F extends Frame>(a: Vec3<F>, b: Vec3<F>): Vec3<F> => vec3(a.x + b.x, a.y + b.y, a.z + b.z);
export const subtract = <F extends Frame>(a: Vec3<F>, b: Vec3<F>): Vec3<F> => vec3(a.x - b.x, a.y - b.y, a.z - b.z);
export const scale = <F extends Frame>(a: Vec3<F>, factor: number): Vec3<F> => vec3(a.x * factor, a.y * factor, a.z * factor);
export const length = <F extends Frame>(a: Vec3<F>): number => Math.hypot(a.x, a.y, a.z);
