import type { RotatingPart } from "./rotating-parts.js";

/** Two orders of two parts that lie too close to be told apart without care. */
export interface Coincidence {
  readonly first: { readonly part: string; readonly order: number };
  readonly second: { readonly part: string; readonly order: number };
  /** Distance of the two in wheel orders, >= 0. */
  readonly separation: number;
  /** Wheel turns that must be recorded at steady speed to part them; null where they coincide exactly. */
  readonly wheelTurns: number | null;
  /** Another gear moves the one and not the other. */
  readonly partedByGear: boolean;
}

/** A Hann window's main lobe is four lines wide (F. J. Harris, Proc. IEEE 66(1), 1978): two orders part when they are that far apart. */
const MAIN_LOBE = 4;

/** Ratios are products of decimals: what differs by less than this is the same ratio, rounded. */
const ROUNDING = 1e-9;

/** Parts above the transmission, whose turns per wheel turn a change of gear alters. */
const aboveGearbox = (part: RotatingPart, all: readonly RotatingPart[]): boolean => {
  const engine = all.findIndex(({ part: name }) => name === "engine");
  return engine >= 0 && all.indexOf(part) >= engine;
};

/**
 * Pairs of orders that a recording of `wheelTurns` turns of the wheel cannot part.
 * All parts are geared to the wheel, so no change of speed parts them: only a longer recording or, across the transmission, another gear.
 */
export function coincidences(parts: readonly RotatingPart[], wheelTurns: number): readonly Coincidence[] {
  const lines = parts.flatMap((part) => part.orders.map(({ order }) => ({ part, order, wheelOrder: part.perWheelTurn * order })));
  return lines.flatMap((first, i) =>
    lines.slice(i + 1).flatMap((second): readonly Coincidence[] => {
      if (first.part === second.part) return [];
      const apart = Math.abs(first.wheelOrder - second.wheelOrder);
      const separation = apart < ROUNDING * first.wheelOrder ? 0 : apart;
      if (separation * wheelTurns >= MAIN_LOBE) return [];
      return [
        {
          first: { part: first.part.part, order: first.order },
          second: { part: second.part.part, order: second.order },
          separation,
          wheelTurns: separation === 0 ? null : Math.ceil(MAIN_LOBE / separation),
          partedByGear: aboveGearbox(first.part, parts) !== aboveGearbox(second.part, parts),
        },
      ];
    }),
  );
}
