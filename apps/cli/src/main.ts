import { randomUUID } from "node:crypto";
import { readStandardInput } from "./files/read-standard-input.js";
import { runProgram } from "./program/run-program.js";

// A reader that stops early, such as head, is no error.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit();
  throw error;
});

process.exitCode = await runProgram(process.argv.slice(2), {
  process: {
    stdout: process.stdout,
    stderr: process.stderr,
    env: process.env,
  },
  terminal: process.stdout.isTTY === true,
  now: () => new Date().toISOString(),
  newId: randomUUID,
  // Once only: a second time the process ends at once, as every program does.
  onStop: (stop) => {
    process.once("SIGINT", stop).once("SIGTERM", stop);
    return () => process.off("SIGINT", stop).off("SIGTERM", stop);
  },
  readStandardInput,
});
