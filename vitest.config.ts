import { defineConfig } from "vitest/config";

// Beside these, Vite adds "import" and "default" by itself.
const conditions = ["halfturn-source", "module", "node"];
const SLOW = "**/*.slow.test.ts";

// Tests read the packages' sources through the export condition "halfturn-source", so that nothing needs building first.
export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: {
    passWithNoTests: false,
    projects: [
      {
        extends: true,
        test: {
          name: "unit",
          include: ["packages/*/src/**/*.test.ts", "apps/*/src/**/*.test.{ts,tsx}", "bench/src/**/*.test.ts", "scripts/**/*.test.ts"],
          exclude: [SLOW, "**/node_modules/**", "**/dist/**"],
        },
      },
      {
        extends: true,
        test: {
          name: "verification",
          include: ["verification/**/*.test.ts", SLOW],
          exclude: ["**/node_modules/**", "**/dist/**"],
          testTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: "browser",
          include: ["apps/web/browser/*.test.ts"],
          globalSetup: "apps/web/browser/support/build.ts",
          // Each file has a server and a browser of its own; two at once would measure each other's load.
          fileParallelism: false,
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
    ],
  },
});
