import { add, cross, directionOf, dot, length, poseOf, type ShaftPose, scale, type Vec3, vec3 } from "../geometry/index.js";
import type { Driveline } from "./driveline.js";

/**
 * The slow, obvious formulation: turn the source arm step by step, carry it through every joint as a vector, measure the angle that comes out.
 * It knows nothing of matrices or closed forms; the tests hold those against it.
 */
export interface SampledMotion {
  /** Turn of each shaft after the source (sections, driven), unwrapped, radians, one row a shaft. */
  readonly turns: readonly (readonly number[])[];
  readonly samples: number;
}

const unit = (v: Vec3): Vec3 => scale(v, 1 / length(v));
const lateral = ({ heading }: ShaftPose): Vec3 => vec3(-Math.sin(heading), Math.cos(heading), 0);

/** Right-hand turn of v about the unit vector d (Rodrigues). */
function turned(v: Vec3, d: Vec3, angle: number): Vec3 {
  const c = Math.cos(angle);
  return add(add(scale(v, c), scale(cross(d, v), Math.sin(angle))), scale(d, dot(d, v) * (1 - c)));
}

/** Cross joints and equal-halved double cross joints only. `samples` steps over one turn of the source arm. */
export function sampleMotion(driveline: Driveline, poses: readonly ShaftPose[], samples: number): SampledMotion {
  const turns: number[][] = driveline.joints.map(() => []);
  for (let step = 0; step < samples; step++) {
    const source = poses[0] as ShaftPose;
    let arm = turned(lateral(source), directionOf(source), (2 * Math.PI * step) / samples);
    driveline.joints.forEach((joint, k) => {
      const input = directionOf(poses[k] as ShaftPose);
      const pose = poses[k + 1] as ShaftPose;
      const output = directionOf(pose);
      if (joint.kind === "double-cross") {
        const middle = directionOf(poseOf(add(input, output)));
        arm = unit(cross(output, unit(cross(middle, arm))));
      } else {
        arm = unit(cross(output, arm));
      }
      const u = lateral(pose);
      const angle = Math.atan2(dot(arm, cross(output, u)), dot(arm, u));
      const row = turns[k] as number[];
      const before = row[step - 1];
      row.push(before === undefined ? angle : before + Math.atan2(Math.sin(angle - before), Math.cos(angle - before)));
      const phasing = driveline.sections[k]?.phasing;
      if (phasing) arm = turned(arm, output, phasing);
    });
  }
  return { turns, samples };
}

/** Deviation of a sampled turn from uniform turning, zero mean. */
export function deviation(row: readonly number[]): number[] {
  const uniform = row.map((angle, step) => angle - (2 * Math.PI * step) / row.length);
  const mean = uniform.reduce((sum, value) => sum + value, 0) / row.length;
  return uniform.map((value) => value - mean);
}

/** Single amplitude of harmonic m of a periodic row, by the defining sum. */
export function harmonic(row: readonly number[], m: number): number {
  let re = 0;
  let im = 0;
  row.forEach((value, step) => {
    re += value * Math.cos((2 * Math.PI * m * step) / row.length);
    im += value * Math.sin((2 * Math.PI * m * step) / row.length);
  });
  return (2 * Math.hypot(re, im)) / row.length;
}

/** Largest value of the trigonometric interpolation of |f| or |f''|, through harmonics 2, 4, 6 ... of the row, refined by golden-section search. */
export function peak(row: readonly number[], derivative: 0 | 2): number {
  const terms: { m: number; re: number; im: number }[] = [];
  for (let m = 2; m < row.length / 2 && m <= 120; m += 2) {
    let re = 0;
    let im = 0;
    row.forEach((value, step) => {
      re += (2 * value * Math.cos((2 * Math.PI * m * step) / row.length)) / row.length;
      im += (2 * value * Math.sin((2 * Math.PI * m * step) / row.length)) / row.length;
    });
    terms.push({ m, re, im });
  }
  const at = (t: number): number =>
    Math.abs(terms.reduce((sum, { m, re, im }) => sum + m ** derivative * (re * Math.cos(m * t) + im * Math.sin(m * t)), 0));
  // Ten steps to the shortest wave kept; the search refines from there.
  const grid = 600;
  const heights = Array.from({ length: grid }, (_, step) => at((Math.PI * step) / grid));
  const best = heights.indexOf(Math.max(...heights));
  let low = (Math.PI * (best - 1)) / grid;
  let high = (Math.PI * (best + 1)) / grid;
  for (let round = 0; round < 80; round++) {
    const third = (high - low) / 3;
    if (at(low + third) < at(high - third)) low += third;
    else high -= third;
  }
  return at((low + high) / 2);
}
