import { coincidences, type Powertrain, type RotatingPart, rateInterval, rotatingParts } from "@halfturn/engine/orders";
import { toSi } from "@halfturn/engine/units";
import { coincidenceToJson } from "./coincidence-to-json.js";
import type { OrdersJson, PartJson } from "./orders-contract.js";

export interface OrdersAsked {
  readonly speedKmh: number;
  /** Turns of the wheel that a recording holds. */
  readonly wheelTurns: number;
}

/** Everything that turns at a road speed as `orders --json` prints it, and which orders a recording of so many turns of the wheel cannot part. */
export function ordersToJson(powertrain: Powertrain, { speedKmh, wheelTurns }: OrdersAsked): OrdersJson {
  const parts = rotatingParts(powertrain, toSi(speedKmh, "km/h"));
  return {
    format: "halfturn-orders",
    version: 1,
    speedKmh,
    parts: parts.map((part) => partToJson(part, powertrain)),
    coincidences: coincidences(parts, wheelTurns).map((one) => coincidenceToJson(one, powertrain.circumference.value)),
  };
}

function partToJson(part: RotatingPart, { circumference }: Powertrain): PartJson {
  const { low, high } = rateInterval(part, circumference);
  const { value, u } = part.rate;
  return {
    part: part.part,
    turnsPerSecond: { value, u, interval95: [low, high] },
    orders: part.orders.map(({ order, cause }) => ({
      order,
      frequencyHz: { value: order * value, u: order * u, interval95: [order * low, order * high] },
      cause,
    })),
  };
}
