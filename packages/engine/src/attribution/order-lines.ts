import type { RotatingPart } from "../orders/index.js";

/** A part's order. */
export interface PartOrderName {
  readonly part: string;
  readonly order: number;
}

/** Whether two names mean the same order of the same part. */
export const sameOrder = (a: PartOrderName, b: PartOrderName): boolean => a.part === b.part && a.order === b.order;

/** One order of one part, as a run can show it. */
export interface OrderLine extends PartOrderName {
  /** Cycles per turn of the shaft whose angle is known. */
  readonly perTurn: number;
  /** Least and greatest frequency in the run, Hz. */
  readonly lowest: number;
  readonly highest: number;
  /** Whether the recording can show it over at least half of the run's turns. */
  readonly observable: boolean;
}

/** A column of the fit: one line, or several that lie so close that they are one. */
export interface FitColumn {
  readonly perTurn: number;
  readonly lines: readonly OrderLine[];
}

/** How fast the reference shaft turns: turns per second, slowest, middle (over its turns) and fastest. */
export interface SpeedRange {
  readonly slowest: number;
  readonly middle: number;
  readonly fastest: number;
}

/** Two lines nearer than this many cycles within a block share one column: parted they would only be noise against noise (common practice, no source). */
const ONE_LINE = 1;

/** Every order of every part in cycles per turn of a reference shaft that turns `perWheelTurn` times per turn of the wheel. limit: greatest frequency that shows, Hz. */
export const orderLines = (
  parts: readonly RotatingPart[],
  perWheelTurn: number,
  { slowest, middle, fastest }: SpeedRange,
  limit: number,
): readonly OrderLine[] =>
  parts.flatMap((part) =>
    part.orders.map(({ order }) => {
      const perTurn = (order * part.perWheelTurn) / perWheelTurn;
      return {
        part: part.part,
        order,
        perTurn,
        lowest: perTurn * slowest,
        highest: perTurn * fastest,
        observable: perTurn * middle < limit,
      };
    }),
  );

/** Columns of the fit from lines: those that `turns` turns of the reference shaft cannot keep apart are put into one at their middle. */
export function fitColumns(lines: readonly OrderLine[], turns: number): readonly FitColumn[] {
  const groups: OrderLine[][] = [];
  for (const line of [...lines].sort((a, b) => a.perTurn - b.perTurn)) {
    const group = groups.at(-1);
    const before = group?.at(-1);
    if (group === undefined || before === undefined || (line.perTurn - before.perTurn) * turns >= ONE_LINE) groups.push([line]);
    else group.push(line);
  }
  return groups.map((group) => ({ perTurn: group.reduce((sum, { perTurn }) => sum + perTurn / group.length, 0), lines: group }));
}
