import { proposeCompletions } from "@stricli/core";
import { appOf } from "../program/app.js";
import type { CliContext } from "../program/context.js";

/** Prints what may follow the words typed so far, one proposal a line. The first word is the program itself. */
export async function runPropose(this: CliContext, _flags: Record<never, never>, ..._typed: string[]): Promise<void> {
  const [, ...typed] = _typed;
  // Bash drops the blank after a finished word; the whole line still has it.
  const inputs = this.process.env.COMP_LINE?.endsWith(" ") ? [...typed, ""] : typed;
  const proposals = await proposeCompletions(appOf(this.words, false), inputs, this);
  this.process.stdout.write(proposals.map(({ completion }) => `${completion}\n`).join(""));
}
