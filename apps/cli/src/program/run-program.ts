import { catalogueOf } from "@halfturn/words";
import { proposeCompletions, run } from "@stricli/core";
import { paintOf } from "../render/paint.js";
import { appOf } from "./app.js";
import { colourWanted } from "./colour.js";
import type { CliContext, CliProcess } from "./context.js";
import { exitCodeOf } from "./exit-code.js";
import { afterLanguage, languageArgument, unitsArgument } from "./language-argument.js";
import { typedSpaces } from "./typed-spaces.js";

/** What the program gets from outside besides its arguments. */
export interface Outside extends Pick<CliContext, "now" | "newId" | "onStop" | "readStandardInput"> {
  readonly process: CliProcess;
  readonly terminal: boolean;
}

/** Runs one command line and gives its exit code. */
export async function runProgram(args: readonly string[], { process, terminal, ...outside }: Outside): Promise<number> {
  const words = catalogueOf(languageArgument(args, process.env), unitsArgument(args));
  const colour = colourWanted(terminal, process.env);
  const app = appOf(words, colour);
  const printing = spacedProcess(process);
  const context: CliContext = {
    ...outside,
    process: printing,
    words,
    paint: paintOf(colour),
    propose: async (typed) => (await proposeCompletions(app, typed, context)).map(({ completion }) => completion),
  };
  await run(app, afterLanguage(args), context);
  return exitCodeOf(process.exitCode);
}

/** The process, whose streams print typed spaces; its exit code stays its own. */
const spacedProcess = (process: CliProcess): CliProcess => {
  const [stdout, stderr] = [typedSpaces(process.stdout), typedSpaces(process.stderr)];
  return {
    stdout,
    stderr,
    env: process.env,
    get exitCode() {
      return process.exitCode ?? null;
    },
    set exitCode(code) {
      process.exitCode = code;
    },
  };
};
