import { statSync } from "node:fs";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { openStore } from "./open-store.js";
import { storeContract } from "./store-contract.test-support.js";
import { temporaryFolder } from "./test-databases.test-support.js";

const folder = temporaryFolder();
afterAll(folder.remove);

storeContract("SQLite", () => openStore({ file: join(folder.path, "shop", "halfturn.sqlite") }));

test("nobody but its owner may read the file", async () => {
  const file = join(folder.path, "owned", "halfturn.sqlite");
  await (await openStore({ file })).close();
  expect(statSync(file).mode & 0o077).toBe(0);
});
