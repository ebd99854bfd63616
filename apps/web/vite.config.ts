import { transformAsync } from "@babel/core";
import react from "@vitejs/plugin-react";
import compiler from "babel-plugin-react-compiler";
import { defineConfig, type Plugin } from "vite";
import { VitePWA } from "vite-plugin-pwa";

/** Larger than any piece of the app: a piece that were left out would be missed without a network. */
const LARGEST_PIECE_BYTES = 5_000_000;

const SOURCES = /\/apps\/web\/src\/.*\.tsx?$/;
const COMPONENT_OR_HOOK = /\buse[A-Z]|<\/|\/>/;

/** Lets the compiler of React remember what a component made until something that it rests on changes, so that a key press redraws what it changed and no more. */
const reactCompiler: Plugin = {
  name: "react-compiler",
  enforce: "pre",
  transform: {
    filter: { id: SOURCES, code: COMPONENT_OR_HOOK },
    handler: async (code, id) => {
      const made = await transformAsync(code, {
        filename: id,
        babelrc: false,
        configFile: false,
        sourceMaps: true,
        parserOpts: { plugins: ["typescript", "jsx"] },
        plugins: [[compiler, { target: "19" }]],
      });
      return made?.code ? { code: made.code, map: made.map } : null;
    },
  },
};

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
  plugins: [reactCompiler, react(), pwa],
  resolve: { conditions: ["halfturn-source", "module", "browser", "development|production"] },
  build: { outDir: "dist", emptyOutDir: true, target: "es2022", assetsInlineLimit: 0, modulePreload: { polyfill: false } },
  worker: { format: "es" },
  // Beside a running server (`npm run halfturn -- serve`), whose own address it asks for.
  server: { proxy: { "/api": { target: "http://localhost:4680", changeOrigin: true, headers: { origin: "http://localhost:4680" } } } },
});
