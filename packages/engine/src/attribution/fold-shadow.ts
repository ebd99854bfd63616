import type { RunFit } from "./fit-run.js";
import type { ReferenceShaft } from "./input.js";
import type { FitColumn } from "./order-lines.js";
import { foldedFrequency } from "./sensor-checks.js";

/** Nearer than this many lines of a block, two frequencies are one. */
const LINES = 2;

/** Where an order above half the rate may lie on a column, as far as the speed is known. */
export interface FoldShadow {
  /** Index of the order among those that fold. */
  readonly fold: number;
  /** Blocks, by index. */
  readonly blocks: ReadonlySet<number>;
}

/**
 * Blocks of a column in which an order above half the rate may lie on it. Where the column lies was measured, and it may be that order which was measured; where the order
 * folds to, only the reference as it was given says, whose speed may be off by the share `looseness` either way. rate: of the recording, Hz; scale: of the reading;
 * seconds: of a block. Only orders that reach the column anywhere are given.
 */
export function foldShadows(
  { places, folded }: RunFit,
  { perTurn }: FitColumn,
  { angle, looseness }: ReferenceShaft,
  known: { readonly rate: number; readonly scale: number; readonly seconds: number },
): readonly FoldShadow[] {
  const { rate, scale, seconds } = known;
  return folded.flatMap(({ column }, fold) => {
    const blocks = new Set<number>();
    for (const [block, { turnsPerSecond, time }] of places.entries()) {
      const own = perTurn * turnsPerSecond * scale;
      const above = column.perTurn * (angle.speedAt(time) / (2 * Math.PI));
      if (Math.abs(foldedFrequency(above, rate) - own) < above * looseness + LINES / seconds) blocks.add(block);
    }
    return blocks.size === 0 ? [] : [{ fold, blocks }];
  });
}
