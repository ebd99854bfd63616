/** Vectors as plain triples, kept apart from the engine's own so that a fault there cannot hide here. */
export type Vector = readonly [x: number, y: number, z: number];

export const cross = ([ax, ay, az]: Vector, [bx, by, bz]: Vector): Vector => [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx];
export const dot = ([ax, ay, az]: Vector, [bx, by, bz]: Vector): number => ax * bx + ay * by + az * bz;
export const add = ([ax, ay, az]: Vector, [bx, by, bz]: Vector): Vector => [ax + bx, ay + by, az + bz];
export const scale = ([x, y, z]: Vector, by: number): Vector => [x * by, y * by, z * by];
export const negative = (v: Vector): Vector => scale(v, -1);
export const length = (v: Vector): number => Math.hypot(...v);
export const unit = (v: Vector): Vector => scale(v, 1 / length(v));

/** Right-hand turn about a unit vector (Rodrigues). */
export const turned = (v: Vector, about: Vector, angle: number): Vector =>
  add(add(scale(v, Math.cos(angle)), scale(cross(about, v), Math.sin(angle))), scale(about, dot(about, v) * (1 - Math.cos(angle))));

/** Angle from one direction to another, in [0, pi]. */
export const angleBetween = (a: Vector, b: Vector): number => Math.atan2(length(cross(a, b)), dot(a, b));

/** Right-hand angle about a unit vector from `a` to `b`, both across it, in (-pi, pi]. */
export const turnAbout = (about: Vector, a: Vector, b: Vector): number => Math.atan2(dot(about, cross(a, b)), dot(a, b));
