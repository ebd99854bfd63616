import { newCase, serialise } from "@halfturn/casefile";
import { writeFault } from "../files/file-fault.js";
import { writeWhole } from "../files/write-whole.js";
import { type CliContext, fail } from "../program/context.js";
import { BAD_USE } from "../program/exit-code.js";
import type { NewFlags } from "./new-flags.js";

/** Writes a new case for a layout. */
export async function runNew(this: CliContext, { layout, title, force }: NewFlags, path: string): Promise<void> {
  const { terminal } = this.words;
  const document = newCase({ id: this.newId(), title, layout, createdAt: this.now() });
  try {
    await writeWhole(path, serialise(document), force ? "replace" : "keep", this.newId());
  } catch (error) {
    return fail(this, BAD_USE, [writeFault(error, path, terminal)]);
  }
  this.process.stdout.write(`${terminal.made.created(path)}\n${terminal.made.createdNext(path)}\n`);
}
