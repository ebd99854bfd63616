import { join } from "node:path";
import { expect, test } from "vitest";
import { killWhileSaving } from "./kill-harness.test-support.js";

const KILLS = 200;
/** Under a minute on a quiet machine. */
const TIME_LIMIT_MS = 400_000;

test(`SQLite: ${KILLS} kills of the program in the middle of saving lose nothing that was acknowledged`, {
  timeout: TIME_LIMIT_MS,
}, async () => {
  let files = 0;
  const acknowledged = await killWhileSaving(KILLS, async (folder) => ({ file: join(folder, `killed-${files++}.sqlite`) }));
  expect(acknowledged).toBeGreaterThan(KILLS * 4);
});
