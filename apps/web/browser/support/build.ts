import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

const SCRIPT = fileURLToPath(new URL("../../../../scripts/build-apps.mjs", import.meta.url));

/** Before the first browser test: the program and the app as people get them, built where they are stale. */
export default function build(): void {
  if (process.env.HALFTURN_PROGRAM !== undefined && process.env.HALFTURN_WEB !== undefined) return;
  // The test runner's own NODE_ENV would make a build for developers.
  const { status } = spawnSync(process.execPath, [SCRIPT], { stdio: "inherit", env: { ...process.env, NODE_ENV: "production" } });
  if (status !== 0) throw new Error("the apps could not be built; the builder's messages stand above");
}
