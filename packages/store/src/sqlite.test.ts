import { join } from "node:path";
import { afterAll } from "vitest";
import { openStore } from "./open-store.js";
import { storeContract } from "./store-contract.test-support.js";
import { temporaryFolder } from "./test-databases.test-support.js";

const folder = temporaryFolder();
afterAll(folder.remove);

storeContract("SQLite", () => openStore({ file: join(folder.path, "shop", "halfturn.sqlite") }));
