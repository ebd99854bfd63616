import { resolve } from "node:path";
import { backUp, putBack, storeFaultOf } from "@halfturn/server";
import { type CliContext, fail } from "../program/context.js";
import { BAD_USE } from "../program/exit-code.js";
import type { BackupFlags } from "./backup-flags.js";
import { type StoreFlags, storeOf } from "./store-flags.js";

/** Writes all that a shop holds into one file. */
export async function runBackup(this: CliContext, flags: BackupFlags): Promise<void> {
  const file = resolve(flags.output);
  const done = await faultsSaid(this, () => backUp(storeOf(flags, this), file));
  if (done) this.process.stdout.write(`${this.words.terminal.serving.backup.written(file)}\n`);
}

/** Puts a backup into an empty shop. */
export async function runRestore(this: CliContext, flags: StoreFlags, file: string): Promise<void> {
  const { restore } = this.words.terminal.serving;
  const done = await faultsSaid(this, () => putBack(storeOf(flags, this), resolve(file)));
  if (!done) return;
  if (done.ok) this.process.stdout.write(`${restore.restored(String(done.cases), done.place)}\n`);
  else fail(this, BAD_USE, [restore.notEmpty(done.place)]);
}

/** The work's answer; null once a fault of the store was printed. */
async function faultsSaid<Answer>(context: CliContext, work: () => Promise<Answer>): Promise<Answer | null> {
  try {
    return await work();
  } catch (error) {
    const fault = storeFaultOf(error);
    if (fault === null) throw error;
    fail(context, BAD_USE, [context.words.terminal.serving.faults[fault.code](fault.place)]);
    return null;
  }
}
