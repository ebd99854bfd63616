import { copyFileSync, mkdirSync, readFileSync } from "node:fs";
import { basename, dirname, join, resolve } from "node:path";

const ASSET_REFERENCE = /new URL\(\s*"(\.{1,2}\/[^"]+\.(?!m?[jt]s")[a-z0-9]+)",\s*import\.meta\.url\s*\)/g;

/**
 * Carries files named by `new URL("../file", import.meta.url)` along with a bundle: copies them to `assets` beside it and points the address there.
 * @param {string} outfile
 * @param {Set<string>} assets filled with the absolute paths of the files carried along
 * @returns {import("esbuild").Plugin}
 */
export const bundleAssets = (outfile, assets) => ({
  name: "bundle-assets",
  setup(build) {
    build.onLoad({ filter: /[/\\](packages|apps)[/\\][^/\\]+[/\\]src[/\\].*\.ts$/ }, ({ path }) => {
      const contents = readFileSync(path, "utf8").replace(ASSET_REFERENCE, (_, reference) => {
        const from = resolve(dirname(path), reference);
        const to = join(dirname(outfile), "assets", basename(from));
        mkdirSync(dirname(to), { recursive: true });
        copyFileSync(from, to);
        assets.add(from);
        return `new URL("./assets/${basename(from)}", import.meta.url)`;
      });
      return { contents, loader: "ts" };
    });
  },
});
