import { noteText } from "@halfturn/words";
import { fileName, readCase } from "../files/read-case.js";
import { listenTo } from "../listen/listen-to.js";
import { withProgress } from "../listen/with-progress.js";
import { type CliContext, fail } from "../program/context.js";
import { BAD_USE, STOPPED } from "../program/exit-code.js";
import { heardLines } from "../render/heard.js";
import { pageWidth } from "../render/wrap.js";
import type { ListenFlags } from "./listen-flags.js";

/** Says which rotating part a recorded vibration follows, for people or as the JSON contract. */
export async function runListen(this: CliContext, flags: ListenFlags, recording: string): Promise<void> {
  const { words, paint } = this;
  const { listening } = words.terminal;
  const read = await readCase(flags.case, this);
  if (!read.ok) return fail(this, BAD_USE, read.lines);
  const { channel, speedFrom, speedFile, gear } = flags;
  const request = { recording, document: read.case, caseName: fileName(flags.case, words), channel, speedFrom, speedFile, gear };
  const heard = await withProgress(this, { quiet: flags.json, say: listening.progress }, (work) => listenTo(request, words, work));
  if (heard === "stopped") return fail(this, STOPPED, [listening.stopped]);
  if (!heard.ok) return fail(this, heard.code, heard.lines);
  if (flags.json) {
    for (const note of heard.notes) this.process.stderr.write(`${noteText(words.orders, note, words.numbers)}\n`);
    this.process.stdout.write(`${JSON.stringify(heard.json, null, 2)}\n`);
    return;
  }
  const view = { words, paint, width: pageWidth(this.process.stdout.columns) };
  this.process.stdout.write(`${heardLines(heard, read.case, view).join("\n")}\n`);
}
