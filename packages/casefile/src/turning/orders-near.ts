import type { OrderJson, OrdersJson } from "../contract/orders-contract.js";

/** An order that may be what was felt or measured at a frequency. */
export interface NearOrder {
  readonly part: string;
  readonly order: number;
  readonly cause: OrderJson["cause"];
  /** Hz at the speed asked about. */
  readonly frequency: number;
  /** How far that lies from what was felt, Hz; > 0 where the order is the higher. */
  readonly apart: number;
}

export interface NearAsked {
  /** Felt or measured, Hz. */
  readonly frequency: number;
  /** How far that may be out, Hz. */
  readonly within: number;
  /** Half width of the share by which the speed may be out. */
  readonly speedShare: number;
}

/** The orders that can lie at a frequency, nearest first: what is known of the tyre, the speed and the frequency leaves room for them. */
export function ordersNear({ parts }: OrdersJson, { frequency, within, speedShare }: NearAsked): readonly NearOrder[] {
  return parts
    .flatMap(({ part, orders }) =>
      orders.flatMap(({ order, cause, frequencyHz }): readonly NearOrder[] => {
        if (frequencyHz === null) return [];
        const [low, high] = frequencyHz.interval95;
        if (frequency < low * (1 - speedShare) - within || frequency > high * (1 + speedShare) + within) return [];
        return [{ part, order, cause, frequency: frequencyHz.value, apart: frequencyHz.value - frequency }];
      }),
    )
    .toSorted((a, b) => Math.abs(a.apart) - Math.abs(b.apart));
}
