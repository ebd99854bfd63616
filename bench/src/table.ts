import type { Judged } from "./judge.js";

const HEADER = ["benchmark", "run ms", "per second", "yardstick ms", "ratio", "budget", "", "what one run is"];

/** Numbers with three figures that count. */
const figures = (value: number) => (value >= 100 ? value.toFixed(0) : value.toPrecision(3));

const cells = ({ name, what, runMs, kernelMs, ratio, budget, within }: Judged) => [
  name,
  figures(runMs),
  figures(1000 / runMs),
  figures(kernelMs),
  figures(ratio),
  figures(budget),
  within ? "ok" : "OVER",
  what,
];

/** The measurements as a table in plain text. */
export function table(judged: readonly Judged[]): string {
  const rows = [HEADER, ...judged.map(cells)];
  const widths = HEADER.map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  return rows
    .map((row) =>
      row
        .map((cell, column) => cell.padEnd(widths[column] ?? 0))
        .join("  ")
        .trimEnd(),
    )
    .join("\n");
}
