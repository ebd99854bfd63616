import { existsSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { type RunningServer, STOP_PATIENCE_MS, startServer, storeFaultOf } from "@halfturn/server";
import type { Terminal } from "@halfturn/words";
import { type CliContext, fail } from "../program/context.js";
import { BAD_USE } from "../program/exit-code.js";
import { spacesByCode } from "../program/typed-spaces.js";
import { VERSION } from "../program/version.js";
import type { ServeFlags } from "./serve-flags.js";
import { storeOf } from "./store-flags.js";

/** Beside the bundle of this program. */
const builtApp = (): string => fileURLToPath(new URL("../../web/dist", import.meta.url));

const SLOW_STOP_MS = 300;

/** The next port; any free one where the system chooses the first. */
const lanPortOf = (port: number): number => (port === 0 ? 0 : port + 1);

/** Serves the shop until it is told to stop. */
export async function runServe(this: CliContext, flags: ServeFlags): Promise<void> {
  const { serving } = this.words.terminal;
  const web = flags.web === undefined ? builtApp() : resolve(flags.web);
  const server = await start(flags, web, this);
  if (server === null) return;
  const stopping = new Promise<void>((stop) => this.onStop(stop));
  const demo = server.demoCases > 0 ? [serving.demoMade(String(server.demoCases))] : [];
  const reached = server.lanAddresses.length > 0 ? [serving.inNetwork(server.lanAddresses.join(" ")), serving.letIn] : [serving.noNetwork];
  const network = flags.lan ? reached : [];
  const lines = [serving.open(server.address), ...network, serving.dataIn(server.place), ...demo, serving.stopWith];
  this.process.stdout.write(`${lines.join("\n")}\n`);
  if (!existsSync(join(web, "index.html"))) this.process.stdout.write(`${serving.noWeb(web)}\n`);
  if (server.folderOpen) this.process.stdout.write(`${serving.openFolder(dirname(server.place))}\n`);
  await stopping;
  // What is over in a moment is not worth a word.
  const slow = setTimeout(() => {
    const requests = server.unanswered();
    if (requests > 0) this.process.stdout.write(`${serving.finishing(String(requests), String(STOP_PATIENCE_MS / 1000))}\n`);
  }, SLOW_STOP_MS);
  await server.stop();
  clearTimeout(slow);
  this.process.stdout.write(`${serving.stopped}\n`);
}

/** The server, or null once a refusal was printed. */
async function start(flags: ServeFlags, web: string, context: CliContext): Promise<RunningServer | null> {
  try {
    return await startServer({
      port: flags.port,
      ...storeOf(flags, context),
      web,
      lanPort: flags.lan ? lanPortOf(flags.port) : null,
      demo: flags.demo,
      version: VERSION,
      now: context.now,
      newId: context.newId,
      writeLog: (line) => context.process.stderr.write(spacesByCode(line)),
    });
  } catch (error) {
    const line = startFault(error, flags.port, context.words.terminal);
    if (line === null) throw error;
    fail(context, BAD_USE, [line]);
    return null;
  }
}

/** Why the server did not start, and what to do; null for what nobody expects. */
function startFault(error: unknown, port: number, { serving }: Terminal): string | null {
  const fault = storeFaultOf(error);
  if (fault !== null) return serving.faults[fault.code](fault.place);
  const { code, syscall, port: refused = port } = error as NodeJS.ErrnoException & { readonly port?: number };
  if (syscall !== "listen" || code === undefined) return null;
  // The local network has a port of its own.
  if (code === "EADDRINUSE") return serving.portTaken(String(refused));
  return code === "EACCES" ? serving.portRefused(String(refused)) : serving.cannotListen(String(refused), code);
}
