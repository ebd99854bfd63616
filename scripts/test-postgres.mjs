// A PostgreSQL server of its own for tests: on a free loopback port, in a temporary folder, without the machine's server and without rights.
// Started by itself it prints its address, runs until it is told to stop, and leaves nothing behind.
import { execFileSync, spawn, spawnSync } from "node:child_process";
import { chownSync, existsSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { pathToFileURL } from "node:url";

const DEBIAN = "/usr/lib/postgresql";
const OWNER = "halfturn";
const READY_MS = 30_000;
const MISSING =
  "These tests need PostgreSQL's server programs (initdb, postgres), and found none. Install them (Debian: apt-get install postgresql), or name a running server in HALFTURN_TEST_POSTGRES.";

/** The folder of the server's programs: the newest of Debian's, or one on the path. */
export function postgresPrograms() {
  const debian = existsSync(DEBIAN) ? readdirSync(DEBIAN).sort((a, b) => Number(b) - Number(a)) : [];
  const folders = [...debian.map((version) => join(DEBIAN, version, "bin")), ...(process.env.PATH ?? "").split(delimiter)];
  return folders.find((folder) => existsSync(join(folder, "initdb")) && existsSync(join(folder, "postgres"))) ?? null;
}

/** PostgreSQL refuses to run as root; then it runs as a user that may nothing. */
function unprivileged() {
  if (process.getuid?.() !== 0) return {};
  for (const name of ["postgres", "nobody"]) {
    const ids = ["-u", "-g"].map((flag) => Number(spawnSync("id", [flag, name], { encoding: "utf8" }).stdout));
    const [uid, gid] = ids;
    if (uid && gid && ids.every(Number.isInteger)) return { uid, gid };
  }
  throw new Error("PostgreSQL will not run as root, and there is no user postgres or nobody to run it as.");
}

/** @returns {Promise<number>} */
const freePort = () =>
  new Promise((resolve, reject) => {
    const probe = createServer();
    probe.on("error", reject);
    probe.listen(0, "127.0.0.1", () => {
      const address = probe.address();
      const port = typeof address === "object" && address ? address.port : 0;
      probe.close(() => resolve(port));
    });
  });

/**
 * A server that can also be killed and started again on the same data.
 * @typedef {{ address: string, kill: () => Promise<void>, start: () => Promise<void>, stop: () => Promise<void> }} TestPostgres
 */

/**
 * @param {{ durable?: boolean }} [options] durable: every commit reaches the disk, as in the shop; otherwise faster
 * @returns {Promise<TestPostgres>}
 */
export async function startTestPostgres({ durable = false } = {}) {
  const programs = postgresPrograms();
  if (programs === null) throw new Error(MISSING);
  const user = unprivileged();
  const folder = mkdtempSync(join(tmpdir(), "halfturn-postgres-"));
  if (user.uid) chownSync(folder, user.uid, user.gid);
  const data = join(folder, "data");
  const where = { ...user, cwd: folder, env: { ...process.env, LC_ALL: "C" } };
  execFileSync(join(programs, "initdb"), ["-D", data, "-U", OWNER, "-A", "trust", "-E", "UTF8", "--no-sync"], { ...where, stdio: "pipe" });
  const port = await freePort();
  const settings = [
    "listen_addresses=127.0.0.1",
    `port=${port}`,
    "unix_socket_directories=",
    "max_connections=60",
    `fsync=${durable ? "on" : "off"}`,
  ];
  const args = ["-D", data, ...settings.flatMap((setting) => ["-c", setting])];
  /** @type {import("node:child_process").ChildProcess | null} */
  let server = null;

  async function start() {
    const child = spawn(join(programs ?? "", "postgres"), args, { ...where, stdio: ["ignore", "ignore", "pipe"] });
    server = child;
    let said = "";
    await new Promise((resolve, reject) => {
      const late = setTimeout(() => reject(new Error(`PostgreSQL did not start: ${said}`)), READY_MS);
      child.stderr?.on("data", (chunk) => {
        said = `${said}${chunk}`.slice(-4000);
        if (!said.includes("ready to accept connections")) return;
        clearTimeout(late);
        resolve(undefined);
      });
      child.once("exit", () => reject(new Error(`PostgreSQL ended at once: ${said}`)));
    });
  }

  /** @param {NodeJS.Signals} signal */
  async function end(signal) {
    const child = server;
    server = null;
    if (child === null || child.exitCode !== null) return;
    const ended = new Promise((resolve) => child.once("exit", resolve));
    child.kill(signal);
    await ended;
  }

  await start();
  return {
    address: `postgres://${OWNER}@127.0.0.1:${port}/postgres`,
    start,
    kill: () => end("SIGKILL"),
    stop: async () => {
      // SIGINT is PostgreSQL's fast shutdown: it waits for no client.
      await end("SIGINT");
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const server = await startTestPostgres();
  console.log(server.address);
  const stop = () => void server.stop().then(() => process.exit(0));
  process.once("SIGTERM", stop).once("SIGINT", stop);
}
