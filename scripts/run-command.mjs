import { spawn } from "node:child_process";
import { root } from "./paths.mjs";

/**
 * keepErrors: also return what it wrote to stderr. held: return all that it wrote instead of showing it. cwd: where to run, the root unless given. stdin: pass the keyboard or pipe on.
 * stops: a request to stop is the program's own matter; this process passes it on and waits.
 * @typedef {{ keepErrors?: boolean, held?: boolean, cwd?: string, stdin?: boolean, stops?: boolean }} RunOptions
 */

/**
 * Runs a program to its end, with its output shown as it comes unless it is held.
 * @param {string} program
 * @param {readonly string[]} args
 * @param {RunOptions} [options]
 * @returns {Promise<{ code: number, errors: string, said: string }>}
 */
export function runCommand(program, args, { keepErrors = false, held = false, cwd = root, stdin = false, stops = false } = {}) {
  return new Promise((resolve, reject) => {
    const child = spawn(program, args, {
      cwd,
      // Node refuses to start a .cmd file without a shell.
      shell: program.endsWith(".cmd"),
      stdio: [stdin ? "inherit" : "ignore", held ? "pipe" : "inherit", keepErrors || held ? "pipe" : "inherit"],
    });
    let errors = "";
    let said = "";
    child.stdout?.setEncoding("utf8").on("data", (chunk) => {
      said += chunk;
    });
    child.stderr?.setEncoding("utf8").on("data", (chunk) => {
      errors += chunk;
      if (held) said += chunk;
      else process.stderr.write(chunk);
    });
    if (stops) {
      process.on("SIGTERM", () => child.kill("SIGTERM"));
      // npm, told to stop, ends the shell between it and this process, and nobody tells this process: only its parent is another one then.
      const parent = process.ppid;
      const watching = setInterval(() => {
        if (process.ppid !== parent) child.kill("SIGTERM");
      }, 500);
      child.on("close", () => clearInterval(watching));
      // The keyboard's Ctrl-C reaches the whole group: the program has it already.
      process.on("SIGINT", () => undefined);
    }
    child.on("error", reject);
    child.on("close", (code) => resolve({ code: code ?? 1, errors, said }));
  });
}

/**
 * Runs a JavaScript file with the Node this script runs on.
 * @param {string} file
 * @param {readonly string[]} args
 * @param {RunOptions} [options]
 */
export const runNode = (file, args, options) => runCommand(process.execPath, [file, ...args], options);
