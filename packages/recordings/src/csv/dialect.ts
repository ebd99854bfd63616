import { COMMA, POINT } from "../bytes/parse-number.js";
import { cellValue } from "./cell-value.js";
import { momentSeconds } from "./moment.js";
import { splitLine } from "./split-line.js";

/** How a table is written. */
export interface Dialect {
  readonly separator: string;
  /** The byte of the decimal sign. */
  readonly mark: number;
}

/** The likelier first: it wins where two read a table alike. */
const DIALECTS: readonly Dialect[] = [
  { separator: "\t", mark: POINT },
  { separator: ";", mark: POINT },
  { separator: ",", mark: POINT },
  { separator: ";", mark: COMMA },
  { separator: "\t", mark: COMMA },
];

/** Share of the cells that are numbers, moments or empty; 0 where none is a number. */
function numberShare(cells: readonly string[], mark: number): number {
  const values = cells.map((cell) => cellValue(cell, mark));
  const others = values.filter(({ kind }) => kind === "other").length - cells.filter((cell) => momentSeconds(cell) !== null).length;
  return values.some(({ kind }) => kind === "number") ? 1 - others / cells.length : 0;
}

/** Whether more than half of the cells are numbers, moments or empty: a note in words may stand beside them. */
export const isRow = (cells: readonly string[], mark: number): boolean => numberShare(cells, mark) > 0.5;

/** Several columns before one: a line that broke off is one number in any dialect. Then more rows, then more columns. */
function better(a: Scored, b: Scored): Scored {
  const [manyA, manyB] = [a.columns > 1, b.columns > 1];
  if (manyA !== manyB) return manyA ? a : b;
  return b.rows > a.rows || (b.rows === a.rows && b.columns > a.columns) ? b : a;
}

interface Scored {
  readonly dialect: Dialect;
  readonly columns: number;
  /** Rows of so many columns, each counted by its share of numbers. */
  readonly rows: number;
}

/**
 * The dialect in which the most lines are rows of numbers, of as many cells as the lines around them; null where no line is one.
 * Of several alike the one with more columns.
 */
export function sniffDialect(lines: readonly string[]): Pick<Scored, "dialect" | "columns"> | null {
  const scored = DIALECTS.map((dialect): Scored => {
    const rows = lines.map((line) => splitLine(line, dialect.separator)).filter((cells) => isRow(cells, dialect.mark));
    const columns = commonest(rows.map(({ length }) => length));
    const shares = rows.filter(({ length }) => length === columns).map((cells) => numberShare(cells, dialect.mark));
    return { dialect, columns, rows: shares.reduce((sum, share) => sum + share, 0) };
  });
  const best = scored.reduce(better);
  return best.rows === 0 ? null : best;
}

function commonest(values: readonly number[]): number {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts].reduce((best, one) => (one[1] > best[1] ? one : best), [0, 0])[0] as number;
}
