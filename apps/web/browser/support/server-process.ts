import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { fileURLToPath } from "node:url";

/** What is tested: the program that was built here, or another (an installed one). */
const PROGRAM = process.env.HALFTURN_PROGRAM ?? fileURLToPath(new URL("../../../cli/dist/halfturn.js", import.meta.url));
const START_MS = 20_000;

/** Starts the program's server. node: what the runtime is told before. */
export const serve = (args: readonly string[], node: readonly string[] = []): ChildProcess =>
  spawn(process.execPath, [...node, PROGRAM, "serve", ...args], { stdio: ["ignore", "pipe", "ignore"] });

/** The address on its own machine that the server prints once it listens: `http://localhost:PORT`. */
export async function addressOf(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let text = "";
    child.stdout?.on("data", (part: Buffer) => {
      text += part.toString();
      const [found] = /http:\/\/localhost:\d+/.exec(text) ?? [];
      if (found !== undefined) resolve(found);
    });
    child.once("exit", (code) => reject(new Error(`the server ended with ${code} before it listened`)));
    setTimeout(() => reject(new Error("the server did not listen in time")), START_MS).unref();
  });
}

/** Asks it to stop, and waits until it has. */
export async function end(child: ChildProcess): Promise<void> {
  const ended = once(child, "exit");
  child.kill("SIGTERM");
  await ended;
}
