import { COMMA, POINT } from "../bytes/parse-number.js";
import { cellValue } from "./cell-value.js";
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

/** Whether all cells are numbers or empty, and at least one is a number. */
export function isNumbers(cells: readonly string[], mark: number): boolean {
  const values = cells.map((cell) => cellValue(cell, mark));
  return values.every(({ kind }) => kind !== "other") && values.some(({ kind }) => kind === "number");
}

/** Several columns before one: a line that broke off is one number in any dialect. Then more rows, then more columns. */
function better(a: Scored, b: Scored): Scored {
  const [manyA, manyB] = [a.columns > 1, b.columns > 1];
  if (manyA !== manyB) return manyA ? a : b;
  return b.rows > a.rows || (b.rows === a.rows && b.columns > a.columns) ? b : a;
}

interface Scored {
  readonly dialect: Dialect;
  readonly columns: number;
  readonly rows: number;
}

/**
 * The dialect in which the most lines are rows of numbers, of as many cells as the lines around them; null where no line is one.
 * Of several alike the one with more columns.
 */
export function sniffDialect(lines: readonly string[]): Dialect | null {
  const scored = DIALECTS.map((dialect): Scored => {
    const rows = lines.map((line) => splitLine(line, dialect.separator)).filter((cells) => isNumbers(cells, dialect.mark));
    const columns = commonest(rows.map(({ length }) => length));
    return { dialect, columns, rows: rows.filter(({ length }) => length === columns).length };
  });
  const best = scored.reduce(better);
  return best.rows === 0 ? null : best.dialect;
}

function commonest(values: readonly number[]): number {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts].reduce((best, one) => (one[1] > best[1] ? one : best), [0, 0])[0] as number;
}
