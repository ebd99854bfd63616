/**
 * A rear driveline of two sections as somebody beside the vehicle sees it: points in the vehicle frame (X forward, Y left, Z up, metres) and rotation matrices.
 * It shares no code with the engine; the powertrain's turn is found by bisection on the mount's height instead of a formula.
 */
export type V = readonly [number, number, number];
type M = readonly [V, V, V];

export const add = (a: V, b: V): V => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const sub = (a: V, b: V): V => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const times = (a: V, f: number): V => [a[0] * f, a[1] * f, a[2] * f];
export const dot = (a: V, b: V): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const norm = (a: V): number => Math.sqrt(dot(a, a));
const turned = (m: M, v: V): V => [dot(m[0], v), dot(m[1], v), dot(m[2], v)];

/** Rotation matrix about a unit axis by an angle. */
function rotation([x, y, z]: V, angle: number): M {
  const s = Math.sin(angle);
  const k = 1 - Math.cos(angle);
  return [
    [1 - k * (y * y + z * z), k * x * y - s * z, k * x * z + s * y],
    [k * x * y + s * z, 1 - k * (x * x + z * z), k * y * z - s * x],
    [k * x * z - s * y, k * y * z + s * x, 1 - k * (x * x + y * y)],
  ];
}

/** Radians and metres; inclination > 0 where the rear end is lower, heading > 0 toward vehicle right. */
export interface RigidVehicle {
  readonly inclination: readonly number[];
  readonly heading: readonly number[];
  readonly lengths: readonly [number, number];
  readonly bearing: number;
  readonly arm: number;
  readonly above: number;
  readonly pivot: V;
  readonly mount: V;
}

/** wedge: radians nose up; the others metres. The wedge's own thickness is left out: the axle's spring position is not given. */
export interface RigidChanges {
  readonly wedge: number;
  readonly drop: number;
  readonly spacer: number;
}

const shaft = (i: number, h: number): V => [-Math.cos(i) * Math.cos(h), -Math.cos(i) * Math.sin(h), -Math.sin(i)];

/** The turn about the lateral axis that raises the mount by exactly the spacer. */
function mountTurn(arm: V, spacer: number): number {
  let low = -0.3;
  let high = 0.3;
  const miss = (turn: number): number => turned(rotation([0, 1, 0], turn), arm)[2] - arm[2] - spacer;
  for (let k = 0; k < 100; k++) {
    const middle = (low + high) / 2;
    if (miss(middle) < 0 === miss(low) < 0) low = middle;
    else high = middle;
  }
  return low;
}

/** Directions of source, both sections and pinion after the changes, along the power flow, and the slip's travel (the back section gives way). */
export function afterChanges(
  vehicle: RigidVehicle,
  { wedge, drop, spacer }: RigidChanges,
): { readonly directions: readonly V[]; readonly slip: number } {
  const [d0, d1, d2, d3] = vehicle.inclination.map((i, k) => shaft(i, vehicle.heading[k] ?? 0)) as [V, V, V, V];
  const [front, back] = vehicle.lengths;
  const p2 = times(d1, front);
  const p3 = add(p2, times(d2, back));
  const engine = rotation([0, 1, 0], mountTurn(sub(vehicle.mount, vehicle.pivot), spacer));
  const q1 = add(vehicle.pivot, turned(engine, times(vehicle.pivot, -1)));

  const i = vehicle.inclination[3] ?? 0;
  const h = vehicle.heading[3] ?? 0;
  const up: V = [-Math.sin(i) * Math.cos(h), -Math.sin(i) * Math.sin(h), Math.cos(i)];
  const lateral: V = [Math.sin(h), -Math.cos(h), 0];
  const centre = sub(add(p3, times(d3, vehicle.arm)), times(up, vehicle.above));
  const axle = rotation(lateral, wedge);
  const q3 = add(centre, turned(axle, sub(p3, centre)));

  const held = add(sub(p2, times(d1, vehicle.bearing)), [0, 0, -drop]);
  const line = sub(held, q1);
  const e1 = times(line, 1 / norm(line));
  const q2 = add(q1, times(e1, front));
  const e2 = sub(q3, q2);
  return { directions: [turned(engine, d0), e1, times(e2, 1 / norm(e2)), turned(axle, d3)], slip: norm(e2) - back };
}

/** Angle between two unit vectors. */
export function angleOf(a: V, b: V): number {
  const c: V = [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
  return Math.atan2(norm(c), dot(a, b));
}
