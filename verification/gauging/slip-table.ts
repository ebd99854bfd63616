import { falseAlarms, slipTally, type Tally, totalOf } from "./detection-rates.js";
import { LAYOUTS } from "./layouts.js";
import { SLIPS } from "./slips.js";

// Prints the tables of docs/verification.md. The number of gaugings of each kind and layout is the one argument:
// npx esbuild verification/gauging/slip-table.ts --bundle --platform=node --format=esm --conditions=halfturn-source | node --input-type=module - 1000
const SETS = Number(process.argv[2] ?? 2000);
const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;
const share = (part: number, whole: number): string => (whole === 0 ? "" : percent(part / whole));

const line = (name: string, tally: Tally): string =>
  `| ${name} | ${tally.drawn} | ${tally.visible} | ${share(tally.caught, tally.visible)} | ${share(tally.settledRightly, tally.visible)} | ${share(tally.settledWrongly, tally.visible)} | ${share(tally.stopped, tally.visible)} |`;

console.log("| Slip | Drawn | Visible | Caught | Right reading set aside | Sound reading set aside | Stopped |");
console.log("| --- | ---: | ---: | ---: | ---: | ---: | ---: |");
const byLayout = SLIPS.map((slip, s) => LAYOUTS.map((layout, k) => slipTally(slip, layout, SETS, 1000 * s + k)));
const tallies = byLayout.map(totalOf);
SLIPS.forEach((slip, s) => {
  console.log(line(slip, tallies[s] as Tally));
});
console.log(line("all", totalOf(tallies)));
console.log("\n| Layout | False alarms | Slips caught |");
console.log("| --- | ---: | ---: |");
const rates = LAYOUTS.map((layout, k) => falseAlarms(layout, SETS, 9000 + k));
LAYOUTS.forEach((layout, k) => {
  const tally = totalOf(byLayout.map((row) => row[k] as Tally));
  console.log(`| ${layout.name} | ${percent(rates[k] as number)} | ${share(tally.caught, tally.visible)} of ${tally.visible} |`);
});
console.log(`| all | ${percent(rates.reduce((sum, rate) => sum + rate, 0) / rates.length)} | |`);
