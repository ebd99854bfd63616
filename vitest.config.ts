import { defineConfig } from "vitest/config";

// Tests read the packages' sources, so that nothing needs building first.
export default defineConfig({
  resolve: { conditions: ["source"] },
  ssr: { resolve: { conditions: ["source"] } },
  test: {
    include: ["packages/**/src/**/*.test.ts", "apps/**/src/**/*.test.ts", "verification/**/*.test.ts"],
  },
});
