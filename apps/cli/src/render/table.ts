import { widthOf } from "./paint.js";

export type Align = "left" | "right";

const GAP = "  ";

/** Rows in columns, two spaces apart and indented; cells may be painted. Trailing blanks are left out. */
export function table(rows: readonly (readonly string[])[], aligns: readonly Align[] = [], indent = 2): readonly string[] {
  const widths: number[] = [];
  for (const row of rows) {
    row.forEach((cell, column) => {
      widths[column] = Math.max(widths[column] ?? 0, widthOf(cell));
    });
  }
  return rows.map((row) =>
    `${" ".repeat(indent)}${row.map((cell, column) => pad(cell, widths[column] ?? 0, aligns[column] ?? "left")).join(GAP)}`.trimEnd(),
  );
}

function pad(cell: string, width: number, align: Align): string {
  const blanks = " ".repeat(width - widthOf(cell));
  return align === "left" ? cell + blanks : blanks + cell;
}
