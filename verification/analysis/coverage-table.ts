import { type Coverage, countCoverage, FAR_FROM_ZERO } from "./count-coverage.js";
import { KINDS } from "./simulated-vehicles.js";

// Prints the table of docs/verification.md. Gaugings for each seed and draws for each gauging may be given:
// npx esbuild verification/analysis/coverage-table.ts --bundle --platform=node --format=esm --conditions=halfturn-source | node --input-type=module - 2000 2000
const GAUGINGS = Number(process.argv[2] ?? 2000);
const DRAWS = Number(process.argv[3] ?? 2000);
const SEEDS = [101, 202, 303];
const PROMISED = { low: 0.93, high: 0.97 } as const;

const isKept = ({ share, distance }: Coverage): boolean => share >= PROMISED.low && (distance < FAR_FROM_ZERO || share <= PROMISED.high);

/** Quantities of one sort, which differ in the shaft, joint or section they are of, share a line. */
const sortOf = (quantity: string): string => {
  if (quantity.startsWith("acceleration")) return `section accelerations, ${quantity.endsWith("drive") ? "drive" : "coast"}`;
  const sort = ["inclination", "heading", "joint angle"].find((start) => quantity.startsWith(start));
  return sort === undefined ? quantity : `${sort}s`;
};

const percent = (share: number): string => (100 * share).toFixed(1);
const range = (values: readonly number[], text: (value: number) => string): string => {
  const [least, most] = [text(Math.min(...values)), text(Math.max(...values))];
  return least === most ? least : `${least} to ${most}`;
};
const distances = (rows: readonly Coverage[]): string =>
  rows.every(({ distance }) => Number.isFinite(distance))
    ? range(
        rows.map(({ distance }) => distance),
        (value) => value.toFixed(1),
      )
    : "signed";

function linesOf(coverage: readonly Coverage[]): ReadonlyMap<string, readonly Coverage[]> {
  const lines = new Map<string, Coverage[]>();
  for (const one of coverage) {
    const line = [one.kind, one.headings, sortOf(one.quantity)].join(" | ");
    lines.set(line, [...(lines.get(line) ?? []), one]);
  }
  return lines;
}

const all = KINDS.flatMap((kind) =>
  [true, false].flatMap((measured) => countCoverage(kind, measured, { gaugings: GAUGINGS, draws: DRAWS, seeds: SEEDS })),
);
console.log(`Seeds ${SEEDS.join(", ")}; ${GAUGINGS} gaugings each, ${DRAWS} draws a gauging.\n`);
console.log("| Driveline | Headings | Quantity | Truth / u | Held, % |");
console.log("| --- | --- | --- | ---: | ---: |");
for (const [line, rows] of linesOf(all))
  console.log(
    `| ${line} | ${distances(rows)} | ${range(
      rows.map(({ share }) => share),
      percent,
    )} |`,
  );
const missed = all.filter((coverage) => !isKept(coverage));
console.log(`\n${all.length} quantities, of which ${missed.length} outside what is promised.`);
for (const { kind, headings, quantity, share, distance } of missed)
  console.log(`- ${kind}, ${headings}: ${quantity} ${percent(share)} at ${distance.toFixed(1)} u`);
