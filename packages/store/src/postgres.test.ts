import { afterAll, beforeAll } from "vitest";
import { openStore } from "./open-store.js";
import { storeContract } from "./store-contract.test-support.js";
import { type EmptyDatabases, emptyDatabases } from "./test-databases.test-support.js";

let databases: EmptyDatabases;
beforeAll(async () => {
  databases = await emptyDatabases();
}, 60_000);
afterAll(() => databases.stop());

storeContract("PostgreSQL", async () => openStore({ address: await databases.next() }));
