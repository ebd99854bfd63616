import type { Coincidence } from "@halfturn/engine/orders";
import type { CoincidenceJson } from "./orders-contract.js";

/** circumference: metres of road per turn of the wheel. */
export const coincidenceToJson = (
  { first, second, separation, wheelTurns, partedByGear }: Coincidence,
  circumference: number,
): CoincidenceJson => ({
  first: { part: first.part, order: first.order },
  second: { part: second.part, order: second.order },
  separationWheelOrders: separation,
  wheelTurns,
  distanceM: wheelTurns === null ? null : wheelTurns * circumference,
  partedByGear,
});
