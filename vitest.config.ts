import { availableParallelism } from "node:os";
import { defineConfig } from "vitest/config";
import { SlowFirst } from "./scripts/slow-first.mjs";

// Beside these, Vite adds "import" and "default" by itself.
const conditions = ["halfturn-source", "module", "node"];
const SLOW = "**/*.slow.test.ts";
const TIMED = "**/*.timed.test.ts";
const BUILT = ["**/node_modules/**", "**/dist/**"];
const PROCESSORS = availableParallelism();

// Tests read the packages' sources through the export condition "halfturn-source", so that nothing needs building first.
export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: {
    passWithNoTests: false,
    // The runner would leave one processor to itself: of two, half.
    maxWorkers: PROCESSORS,
    sequence: { sequencer: SlowFirst },
    projects: [
      {
        extends: true,
        test: {
          name: "unit",
          include: ["packages/*/src/**/*.test.ts", "apps/*/src/**/*.test.{ts,tsx}", "bench/src/**/*.test.ts", "scripts/**/*.test.ts"],
          exclude: [SLOW, TIMED, ...BUILT],
          // Two hundred short files in a process each would take longer to start than to run.
          isolate: false,
          setupFiles: "scripts/restore-after-file.mjs",
          // Some start the program, a database or a server, on machines that have other work too.
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: "verification",
          include: ["verification/**/*.test.ts", SLOW],
          exclude: [TIMED, ...BUILT],
          testTimeout: 120_000,
          hookTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: "browser",
          include: ["apps/web/browser/*.test.ts"],
          globalSetup: "apps/web/browser/support/build.ts",
          // Each file has a server and a browser of its own, that wait more than they work: two at once have a processor each.
          sequence: { groupOrder: 1 },
          maxWorkers: Math.min(2, PROCESSORS),
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: "timed",
          include: [TIMED],
          exclude: BUILT,
          // These hold bounds in milliseconds: nothing may run beside them.
          sequence: { groupOrder: 2 },
          fileParallelism: false,
          testTimeout: 60_000,
        },
      },
    ],
  },
});
