import type { RidgeSpeed } from "../signal/index.js";
import type { ReferenceShaft } from "./input.js";

/** A ridge keeps the shape of the speed to about this share. */
const RIDGE_WANDER = 0.01;
/** Beyond this a recording says nothing about which order is which. */
const LOOSEST = 0.5;

/**
 * The reference where nobody logged the speed and the ridge of an order stands in. Which order the ridge is was assumed, so it proves nothing about that order:
 * only what was known before, the shaft's least and greatest speed in the recording (rad/s), says which orders the ridge can be, and between those the other
 * lines decide. A wide range leaves the verdict open. perWheelTurn: of the shaft whose order was assumed.
 */
export function ridgeReference(
  { angle, speeds }: RidgeSpeed,
  perWheelTurn: number,
  { slowest, fastest }: { readonly slowest: number; readonly fastest: number },
): ReferenceShaft {
  const mean = speeds.reduce((sum, speed) => sum + speed / speeds.length, 0);
  const looseness = Math.min(LOOSEST, Math.max(RIDGE_WANDER, fastest / mean - 1, 1 - slowest / mean));
  return { angle, perWheelTurn, looseness, wander: RIDGE_WANDER };
}
