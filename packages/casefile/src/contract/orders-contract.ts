import type { OrderCause } from "@halfturn/engine/orders";
import type { Quantity } from "./analysis-contract.js";

export interface OrderJson {
  /** Times per turn of the part. */
  readonly order: number;
  readonly frequencyHz: Quantity;
  readonly cause: OrderCause;
}

export interface PartJson {
  /** `wheel`, `propeller-shaft`, `transfer-shaft`, `engine`, or the id of an accessory. */
  readonly part: string;
  readonly turnsPerSecond: Quantity;
  readonly orders: readonly OrderJson[];
}

/** Two orders that a recording of the length asked about does not part. */
export interface CoincidenceJson {
  readonly first: { readonly part: string; readonly order: number };
  readonly second: { readonly part: string; readonly order: number };
  /** How far apart they are, in times per turn of the wheel. */
  readonly separationWheelOrders: number;
  /** Turns of the wheel, and road, at steady speed that part them; null where none do. */
  readonly wheelTurns: number | null;
  readonly distanceM: number | null;
  readonly partedByGear: boolean;
}

/** What `orders --json` prints. */
export interface OrdersJson {
  readonly format: "halfturn-orders";
  readonly version: 1;
  readonly speedKmh: number;
  readonly parts: readonly PartJson[];
  readonly coincidences: readonly CoincidenceJson[];
}
