import type { MetresPerSecond } from "../units/index.js";
import type { RollingCircumference } from "./rolling-circumference.js";

/** Ratios from the wheel up to the engine, in one gear. */
export interface Powertrain {
  readonly circumference: RollingCircumference;
  /** Propeller-shaft turns per wheel turn. */
  readonly axleRatio: number;
  /** Turns into the transfer case per turn out of it; 1 = none or direct. */
  readonly transferRatio: number;
  /** Engine turns per turn out of the transmission, in the gear driven; null = gear not known, so neither is the engine. */
  readonly gearRatio: number | null;
  readonly cylinders: number | null;
  /** Share by which a slipping torque converter or clutch lets the engine run ahead; rectangular from 0 to this. */
  readonly slip: number;
  /** Turns per engine turn, by pulley ratio. */
  readonly accessories: readonly { readonly id: string; readonly ratio: number }[];
}

/** Something that turns at its own rate. */
export interface RotatingPart {
  readonly part: string;
  /** Turns per turn of the wheel. */
  readonly perWheelTurn: number;
  /** Turns per second. */
  readonly rate: { readonly value: number; readonly u: number };
  /** What it can shake at, in turns of its own. */
  readonly orders: readonly PartOrder[];
}

export interface PartOrder {
  readonly order: number;
  readonly cause: OrderCause;
}

export type OrderCause =
  | "wheel-unbalance-or-runout"
  | "wheel-out-of-round-twice"
  | "wheel-out-of-round-thrice"
  | "shaft-unbalance-or-runout"
  | "joint-angles"
  | "joint-angles-higher"
  | "engine-unbalance"
  | "misfire"
  | "firing"
  | "accessory-unbalance";

const WHEEL: readonly PartOrder[] = [
  { order: 1, cause: "wheel-unbalance-or-runout" },
  { order: 2, cause: "wheel-out-of-round-twice" },
  { order: 3, cause: "wheel-out-of-round-thrice" },
];
const SHAFT: readonly PartOrder[] = [
  { order: 1, cause: "shaft-unbalance-or-runout" },
  { order: 2, cause: "joint-angles" },
  { order: 4, cause: "joint-angles-higher" },
];

/** Four-stroke: half a turn's order for one weak cylinder, and as many firings per turn as half the cylinders. */
const engineOrders = (cylinders: number | null): readonly PartOrder[] => [
  { order: 0.5, cause: "misfire" },
  { order: 1, cause: "engine-unbalance" },
  ...(cylinders === null || cylinders === 2 ? [] : [{ order: cylinders / 2, cause: "firing" } as const]),
];

/** Everything that turns, from the wheel to the accessories, at a road speed (m/s, > 0). u follows the circumference, and the slip above the transmission. */
export function rotatingParts(powertrain: Powertrain, speed: MetresPerSecond): readonly RotatingPart[] {
  const { circumference, axleRatio, transferRatio, gearRatio, slip } = powertrain;
  const wheel = speed / circumference.value;
  const share = circumference.u / circumference.value;
  const part = (name: string, perWheelTurn: number, orders: readonly PartOrder[], slipping = 0): RotatingPart => {
    // Slip is somewhere between none and its most: its middle, and a rectangular half width of the same size.
    const turns = perWheelTurn * (1 + slipping / 2);
    return {
      part: name,
      perWheelTurn: turns,
      rate: { value: wheel * turns, u: wheel * turns * Math.hypot(share, slipping / 2 / Math.sqrt(3)) },
      orders,
    };
  };
  const upstream = axleRatio * transferRatio;
  return [
    part("wheel", 1, WHEEL),
    part("propeller-shaft", axleRatio, SHAFT),
    ...(transferRatio === 1 ? [] : [part("transfer-shaft", upstream, SHAFT)]),
    ...(gearRatio === null
      ? []
      : [
          part("engine", upstream * gearRatio, engineOrders(powertrain.cylinders), slip),
          ...powertrain.accessories.map(({ id, ratio }) =>
            part(id, upstream * gearRatio * ratio, [{ order: 1, cause: "accessory-unbalance" }], slip),
          ),
        ]),
  ];
}
