import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";

// The packages are read from their sources, as everywhere; nothing is inlined into the page, so that its security policy can forbid inline code.
export default defineConfig({
  root: import.meta.dirname,
  plugins: [react()],
  resolve: { conditions: ["halfturn-source", "module", "browser", "development|production"] },
  build: { outDir: "dist", emptyOutDir: true, target: "es2022", assetsInlineLimit: 0, modulePreload: { polyfill: false } },
  worker: { format: "es" },
});
