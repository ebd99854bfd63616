// Times lists, searches and saves of a large shop on both databases; on PostgreSQL where its server programs are found.
import { bundle } from "./bundle.mjs";
import { inRoot } from "./paths.mjs";
import { runNode } from "./run-command.mjs";
import { postgresPrograms, startTestPostgres } from "./test-postgres.mjs";

// Below the package, where the driver that stays outside the bundle is found.
const outfile = inRoot("packages", "store", "dist", "bench", "run.js");
await bundle(inRoot("bench", "src", "store", "run.ts"), outfile);
const server = postgresPrograms() === null ? null : await startTestPostgres({ durable: true });
if (server === null) console.error("PostgreSQL's server programs were not found; only SQLite is timed.");
const { code } = await runNode(outfile, server === null ? [] : [server.address]);
await server?.stop();
process.exitCode = code;
