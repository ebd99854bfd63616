import type { Case, OrdersJson } from "@halfturn/casefile";
import type { CommonPart } from "@halfturn/words";
import type { FigureLabels } from "../figure-labels.js";

/** A part that turns, with its turns per second at the marked speed and their 95 % interval. */
export interface TurningPart {
  readonly name: string;
  readonly rate: { readonly value: number; readonly low: number; readonly high: number };
  /** Times per turn at which it can shake. */
  readonly orders: readonly number[];
}

/** What the chart of orders is drawn from. */
export interface OrderPicture {
  readonly speedKmh: number;
  /** Speeds at which the complaint is felt; null where it names none. */
  readonly complaintKmh: readonly [from: number, to: number] | null;
  readonly parts: readonly TurningPart[];
}

/** The picture of a case's orders at one road speed; accessories go by their labels. */
export function orderPictureOf(json: OrdersJson, document: Case, { turningParts }: FigureLabels): OrderPicture {
  const accessories = new Map((document.vehicle?.accessories ?? []).map(({ id, label }) => [id, label ?? id]));
  return {
    speedKmh: json.speedKmh,
    complaintKmh: document.complaint?.speedKmh ?? null,
    parts: json.parts.flatMap(({ part, turnsPerSecond, orders }) => {
      if (turnsPerSecond === null) return [];
      const [low, high] = turnsPerSecond.interval95;
      const name = turningParts[part as CommonPart] ?? accessories.get(part) ?? part;
      return [{ name, rate: { value: turnsPerSecond.value, low, high }, orders: orders.map(({ order }) => order) }];
    }),
  };
}
