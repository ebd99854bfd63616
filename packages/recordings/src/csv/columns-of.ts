import { type ColumnName, columnName } from "../channels/column-name.js";
import { cellValue } from "./cell-value.js";
import { momentSeconds } from "./moment.js";

/** The columns of a table: by their headings, and by the first row where these leave open which of them tells the time, or in what. */
export function columnsOf(headings: readonly string[], row: readonly string[], mark: number): readonly ColumnName[] {
  const named = numbered(headings.map((heading, index) => columnName(heading === "" ? `column_${index + 1}` : heading)));
  const isTold = named.some(({ quantity }) => quantity === "time");
  return named.map((column, k): ColumnName => {
    const cell = row[k] ?? "";
    if (column.quantity === "time") return column.unit === null ? { ...column, ...sinceEpoch(cell, mark) } : column;
    return !isTold && column.quantity === "unknown" && momentSeconds(cell) !== null ? { ...column, quantity: "time" } : column;
  });
}

/** Columns of one name are told apart by a number: a person on the road cannot rename them. Every time column is a clock of its own, whatever its name. */
function numbered(columns: readonly ColumnName[]): readonly ColumnName[] {
  const seen = new Map<string, number>();
  return columns.map((column) => {
    const count = (seen.get(column.id) ?? 0) + 1;
    seen.set(column.id, count);
    return count === 1 || column.quantity === "time"
      ? column
      : { ...column, id: `${column.id} #${count}`, name: `${column.name} #${count}` };
  });
}

/** Years 2000 to 2100, in seconds since 1970: no clock that starts with its recording comes near. */
const [EARLIEST, LATEST] = [946_684_800, 4_102_444_800];
const FRACTIONS = [
  { unit: "ms", factor: 1e-3 },
  { unit: "us", factor: 1e-6 },
  { unit: "ns", factor: 1e-9 },
] as const;

/** The unit of a clock that counts parts of seconds since 1970, as phones do; nothing where it does not. */
function sinceEpoch(cell: string, mark: number): Pick<ColumnName, "unit" | "factor"> | null {
  const read = cellValue(cell, mark);
  if (read.kind !== "number") return null;
  return FRACTIONS.find(({ factor }) => read.value * factor > EARLIEST && read.value * factor < LATEST) ?? null;
}
