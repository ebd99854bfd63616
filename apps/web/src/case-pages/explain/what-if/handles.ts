import { degreesToRadians } from "@halfturn/engine/units";
import { MOVABLE_REACH, type MovableView } from "@halfturn/figures";
import type { Moves } from "./moves.js";

/** What can be taken hold of: a joint by its place in power order, or the free end of the source or the driven shaft. */
export type Handle = { readonly kind: "joint"; readonly joint: number } | { readonly kind: "source" } | { readonly kind: "driven" };

/** A handle's value counts in whole steps: millimetres up for a joint, tenths of a degree up for a shaft's free end. */
export const STEP_METRES = 0.001;
export const STEP_RADIANS = degreesToRadians(0.1);
export const MOST_MILLIMETRES = Math.round(MOVABLE_REACH / STEP_METRES);
/** Steps of a tilt: five degrees, more than any wedge. */
export const MOST_TENTHS = 50;

export const handlesOf = (joints: number): readonly Handle[] => [
  { kind: "source" },
  ...Array.from({ length: joints }, (_, joint) => ({ kind: "joint" as const, joint })),
  { kind: "driven" },
];

export const mostSteps = (handle: Handle): number => (handle.kind === "joint" ? MOST_MILLIMETRES : MOST_TENTHS);

/** How far a handle stands above as measured, in steps. Lifting the source's free end makes its driven end the lower one; lifting the driven shaft's does the reverse. */
export function stepsOf({ rises, sourceTilt, drivenTilt }: Moves, handle: Handle): number {
  if (handle.kind === "joint") return Math.round((rises[handle.joint] ?? 0) / STEP_METRES) + 0;
  return Math.round((handle.kind === "source" ? sourceTilt : -drivenTilt) / STEP_RADIANS) + 0;
}

/** The moves with one handle at so many steps, no further than it goes. */
export function withSteps(moves: Moves, handle: Handle, wanted: number): Moves {
  const most = mostSteps(handle);
  const steps = Math.min(most, Math.max(-most, Math.round(wanted)));
  if (handle.kind === "joint") return { ...moves, rises: moves.rises.map((rise, k) => (k === handle.joint ? steps * STEP_METRES : rise)) };
  return handle.kind === "source" ? { ...moves, sourceTilt: steps * STEP_RADIANS } : { ...moves, drivenTilt: -steps * STEP_RADIANS + 0 };
}

export function placeOf({ start, joints, end }: Pick<MovableView, "start" | "joints" | "end">, handle: Handle): { x: number; y: number } {
  if (handle.kind === "source") return start;
  return handle.kind === "driven" ? end : (joints[handle.joint] ?? start);
}

/** A thumb's stroke, pixels: it takes a handle through all of its range, however small the driveline is drawn. */
const STROKE_PIXELS = 150;

/**
 * How many steps a drag by so many pixels upward is, from where the handle was taken hold of. A handle stays under the finger where a step is drawn large enough for
 * that, and moves less than the finger where it is not.
 */
export function draggedSteps(view: MovableView, handle: Handle, pixelsUp: number): number {
  const leastPixels = STROKE_PIXELS / 2 / mostSteps(handle);
  if (handle.kind === "joint") return pixelsUp / Math.max(leastPixels, view.pixelsPerMetre * STEP_METRES);
  const [joint, end] = handle.kind === "source" ? [view.joints[0], view.start] : [view.joints.at(-1), view.end];
  const arm = Math.hypot(end.x - (joint?.x ?? 0), end.y - (joint?.y ?? 0));
  if (arm * view.factor * STEP_RADIANS < leastPixels) return pixelsUp / leastPixels;
  const rise = (joint?.y ?? 0) - end.y;
  const slope = (height: number): number => Math.asin(Math.min(1, Math.max(-1, height / arm)));
  return (slope(rise + pixelsUp) - slope(rise)) / view.factor / STEP_RADIANS;
}
