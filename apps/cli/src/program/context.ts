import type { Catalogue } from "@halfturn/words";
import type { CommandContext } from "@stricli/core";
import type { Paint } from "../render/paint.js";

/** The streams and settings of the process that commands may touch. */
export interface CliProcess extends Pick<NodeJS.Process, "stdout" | "stderr" | "env"> {
  exitCode?: number | string | null;
}

/** What a command is given: everything that comes from outside, so that a command itself holds no clock and no randomness. */
export interface CliContext extends CommandContext {
  readonly process: CliProcess;
  readonly words: Catalogue;
  readonly paint: Paint;
  readonly now: () => string;
  readonly newId: () => string;
  /** Calls back once when the user asks to stop; what it gives ends the listening. */
  readonly onStop: (stop: () => void) => () => void;
  readonly readStandardInput: (limit: number) => Promise<Uint8Array>;
  /** What may follow the words typed so far; the last one may be half a word, or empty. */
  readonly propose: (typed: readonly string[]) => Promise<readonly string[]>;
}

/** Writes lines to standard error and sets the exit code. */
export function fail(context: CliContext, exitCode: 1 | 2 | 130, lines: readonly string[]): void {
  for (const line of lines) context.process.stderr.write(`${line}\n`);
  context.process.exitCode = exitCode;
}
