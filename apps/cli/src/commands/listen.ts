import { type Case, FOLLOWED_SPEED, recordHeard, serialise } from "@halfturn/casefile";
import { noteText, signalFaultText } from "@halfturn/words";
import { spoolFault, writeFault } from "../files/file-fault.js";
import { fileName, readCase, STANDARD_INPUT } from "../files/read-case.js";
import { SpoolFailure, temporarySpools } from "../files/temporary-spools.js";
import { writeWhole } from "../files/write-whole.js";
import { type Heard, type ListenRequest, listenTo } from "../listen/listen-to.js";
import type { Refusal } from "../listen/refusal.js";
import { vibrationFigure } from "../listen/vibration-figure.js";
import { type CliContext, fail } from "../program/context.js";
import { BAD_USE, STOPPED, UNANSWERED } from "../program/exit-code.js";
import { jsonText } from "../program/json-text.js";
import { withProgress } from "../program/with-progress.js";
import { heardLines } from "../render/heard.js";
import { pageWidth } from "../render/wrap.js";
import type { ListenFlags } from "./listen-flags.js";

/** Says which rotating part a recorded vibration follows, for people or as the JSON contract, and draws it. */
export async function runListen(this: CliContext, flags: ListenFlags, recording: string): Promise<void> {
  const { words, paint } = this;
  const { listening } = words.terminal;
  if (flags.keep && flags.case === STANDARD_INPUT) return fail(this, BAD_USE, [listening.keepNeedsFile]);
  const read = await readCase(flags.case, this);
  if (!read.ok) return fail(this, BAD_USE, read.lines);
  const { channel, speedFrom, speedFile, gear } = flags;
  const request = { recording, document: read.case, caseName: fileName(flags.case, words), channel, speedFrom, speedFile, gear };
  const heard = await heardAndDrawn(request, flags, this);
  if (heard === "stopped") return fail(this, STOPPED, [listening.stopped]);
  if (!heard.ok) return fail(this, heard.code, heard.lines);
  if (flags.keep && !(await keep(heard, read.case, recording, flags.case, this))) return;
  if (flags.json) {
    for (const note of heard.notes) this.process.stderr.write(`${noteText(words.orders, note, words.numbers)}\n`);
    this.process.stdout.write(jsonText(heard.json));
  } else {
    const view = { words, paint, width: pageWidth(this.process.stdout.columns) };
    this.process.stdout.write(`${heardLines(heard, read.case, view).join("\n")}\n`);
  }
  if (flags.keep) this.process.stderr.write(`${listening.kept(flags.case)}\n`);
  if (flags.figure !== undefined) this.process.stderr.write(`${listening.figureWritten(flags.figure)}\n`);
}

/** Writes what was heard into the case file, whole or not at all. False once a refusal was printed. */
async function keep({ json, speedColumn, gear }: Heard, document: Case, file: string, path: string, context: CliContext): Promise<boolean> {
  const kept = recordHeard(document, { file, json, speedFrom: speedColumn ?? FOLLOWED_SPEED, gear }, context.now());
  try {
    await writeWhole(path, serialise(kept, document), "replace", context.newId());
    return true;
  } catch (error) {
    fail(context, BAD_USE, [writeFault(error, path, context.words.terminal)]);
    return false;
  }
}

/** Listens, and writes the picture where one is wanted; a picture that cannot be written refuses the whole. */
async function heardAndDrawn(
  asked: Omit<ListenRequest, "room">,
  flags: ListenFlags,
  context: CliContext,
): Promise<Heard | Refusal | "stopped"> {
  const room = temporarySpools();
  try {
    return await heardFrom({ ...asked, room }, flags, context);
  } catch (error) {
    if (!(error instanceof SpoolFailure)) throw error;
    return { ok: false, code: UNANSWERED, lines: [spoolFault(error, asked.recording, context.words.terminal)] };
  } finally {
    room.close();
  }
}

async function heardFrom(request: ListenRequest, { json, figure }: ListenFlags, context: CliContext): Promise<Heard | Refusal | "stopped"> {
  const { words } = context;
  return withProgress(context, { quiet: json, say: words.terminal.listening.progress }, async (work) => {
    const heard = await listenTo(request, words, work);
    if (!heard.ok || figure === undefined) return heard;
    const drawn = await vibrationFigure(heard, request.document, words, work);
    if (!drawn.ok) return { ok: false, code: UNANSWERED, lines: [`${figure}: ${signalFaultText(words.vibration, drawn, words.numbers)}`] };
    try {
      await writeWhole(figure, `${drawn.value}\n`, "replace", context.newId());
    } catch (error) {
      return { ok: false, code: BAD_USE, lines: [writeFault(error, figure, words.terminal)] };
    }
    return heard;
  });
}
