import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import { VitePWA } from "vite-plugin-pwa";

/** Larger than any piece of the app: a piece that were left out would be missed without a network. */
const LARGEST_PIECE_BYTES = 5_000_000;

const pwa = VitePWA({
  registerType: "prompt",
  injectRegister: false,
  includeManifestIcons: false,
  workbox: {
    globPatterns: ["**/*.{html,js,css,svg,png,json,woff2}"],
    maximumFileSizeToCacheInBytes: LARGEST_PIECE_BYTES,
    navigateFallback: "/index.html",
    navigateFallbackDenylist: [/^\/api\//],
    cleanupOutdatedCaches: true,
  },
  manifest: {
    name: "Halfturn",
    short_name: "Halfturn",
    description: "Driveline vibration: gauge, explain, correct, prove",
    id: "/",
    start_url: "/cases",
    display: "standalone",
    background_color: "#14191e",
    theme_color: "#14191e",
    icons: [
      { src: "/icon.svg", sizes: "any", type: "image/svg+xml", purpose: "any" },
      { src: "/icon-192.png", sizes: "192x192", type: "image/png", purpose: "any" },
      { src: "/icon-512.png", sizes: "512x512", type: "image/png", purpose: "maskable" },
    ],
  },
});

// The packages are read from their sources, as everywhere; nothing is inlined into the page, so that its security policy can forbid inline code.
export default defineConfig({
  root: import.meta.dirname,
  plugins: [react(), pwa],
  resolve: { conditions: ["halfturn-source", "module", "browser", "development|production"] },
  build: { outDir: "dist", emptyOutDir: true, target: "es2022", assetsInlineLimit: 0, modulePreload: { polyfill: false } },
  worker: { format: "es" },
  // Beside a running server (`npm run halfturn -- serve`), whose own address it asks for.
  server: { proxy: { "/api": { target: "http://localhost:4680", changeOrigin: true, headers: { origin: "http://localhost:4680" } } } },
});
