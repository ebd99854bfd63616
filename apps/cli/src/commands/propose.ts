import type { CliContext } from "../program/context.js";

/** Prints what may follow the words typed so far, one proposal a line. The first word is the program itself. */
export async function runPropose(this: CliContext, _flags: Record<never, never>, ...words: string[]): Promise<void> {
  const [, ...typed] = words;
  // Bash drops the blank after a finished word; the whole line still has it.
  const proposals = await this.propose(this.process.env.COMP_LINE?.endsWith(" ") ? [...typed, ""] : typed);
  this.process.stdout.write(proposals.map((proposal) => `${proposal}\n`).join(""));
}
