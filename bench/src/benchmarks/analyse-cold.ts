import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import type { Benchmark } from "../benchmark.js";

const PROGRAM = "apps/cli/dist/halfturn.js";
const CASE = "packages/casefile/examples/two-piece.halfturn.json";

/** What a person waits for: Node starts, the program loads, reads the case and prints the answer. */
export const analyseCold: Benchmark = {
  name: "analyse-cold",
  what: "`halfturn analyse` on the two-piece example, from nothing to the printed answer",
  prepare: () => {
    if (!existsSync(PROGRAM)) throw new RangeError(`${PROGRAM} is not built; run \`npm run build\` first`);
    return () => {
      const { status, stdout } = spawnSync(process.execPath, [PROGRAM, "analyse", CASE, "--json"], { encoding: "utf8" });
      return status === 0 ? stdout.length : Number.NaN;
    };
  },
};
