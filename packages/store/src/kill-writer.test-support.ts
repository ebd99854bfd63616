// A process that saves without pause, and says of each save that it was acknowledged; it is there to be killed.
import { writeSync } from "node:fs";
import type { StoreLocation } from "./open-database.js";
import { openStore } from "./open-store.js";
import { at, sampleCase } from "./sample-cases.test-support.js";

const [location = "{}", round = ""] = process.argv.slice(2);
const store = await openStore(JSON.parse(location) as StoreLocation);
for (let k = 0; ; k++) {
  const id = `round-${round}-${k}`;
  const made = await store.create(sampleCase(id, { notes: `first ${"words ".repeat(k % 300)}` }), at(k));
  if (made.ok) writeSync(1, `${id} ${made.revision.revision}\n`);
  const saved = await store.save(sampleCase(id, { notes: `second ${"words ".repeat(k % 300)}` }), 1, at(k));
  if (saved.ok) writeSync(1, `${id} ${saved.revision.revision}\n`);
}
