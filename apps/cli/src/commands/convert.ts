import type { Case } from "@halfturn/casefile";
import type { RecordingFault } from "@halfturn/engine/findings";
import { type ChannelPlace, channelPlaces, findChannel, partOfRecording, type Recording, type RecordingResult } from "@halfturn/recordings";
import { findingText, recordingFaultText } from "@halfturn/words";
import { caseEntry } from "../convert/case-entry.js";
import { ENCODINGS_OF } from "../convert/recording-file.js";
import { type TooLarge, type WrittenRecording, writtenRecording } from "../convert/written-recording.js";
import { spoolFault, writeFault } from "../files/file-fault.js";
import { readCase } from "../files/read-case.js";
import { SpoolFailure, temporarySpools } from "../files/temporary-spools.js";
import { writeWhole } from "../files/write-whole.js";
import { type OpenRoadTest, openRoadTest } from "../listen/open-road-test.js";
import type { Refusal } from "../listen/refusal.js";
import { type CliContext, fail } from "../program/context.js";
import { BAD_USE, STOPPED, UNANSWERED } from "../program/exit-code.js";
import { jsonText } from "../program/json-text.js";
import { pause } from "../program/pause.js";
import { withProgress } from "../program/with-progress.js";
import type { ConvertFlags } from "./convert-flags.js";

/** Writes a recording in another format, whole or not at all. */
export async function runConvert(this: CliContext, flags: ConvertFlags, path: string): Promise<void> {
  const { words } = this;
  const unfit = unfitFlag(flags, this);
  if (unfit !== null) return fail(this, BAD_USE, [unfit]);
  const read = flags.case === undefined ? null : await readCase(flags.case, this);
  if (read !== null && !read.ok) return fail(this, BAD_USE, read.lines);
  const opened = await openRoadTest(path, read?.case ?? NO_RECORDINGS, words);
  if (!opened.ok) return fail(this, opened.code, opened.lines);
  const room = temporarySpools();
  try {
    const say = words.terminal.converting.progress;
    const done = await withProgress(this, { quiet: flags.json, say }, async (work) => {
      const part = await chosenPart(opened, flags, this);
      if ("lines" in part) return part;
      const written = await writtenRecording(part, flags, room, { ...work, pause });
      if (!written.ok) return refusalOf(written, flags, path, this);
      await writeWhole(flags.output.path, bytesOf(written.bytes), flags.force ? "replace" : "keep", this.newId());
      return written;
    });
    if (done === "stopped") return fail(this, STOPPED, [words.terminal.listening.stopped]);
    if (!done.ok) return fail(this, done.code, done.lines);
    report(done, opened, flags, this);
  } catch (error) {
    if (error instanceof Broken) return fail(this, BAD_USE, [faultLine(error.fault, path, flags, this)]);
    if (error instanceof SpoolFailure) return fail(this, UNANSWERED, [spoolFault(error, path, words.terminal)]);
    return fail(this, BAD_USE, [writeFault(error, flags.output.path, words.terminal)]);
  } finally {
    room.close();
    await opened.close();
  }
}

const NO_RECORDINGS: Pick<Case, "recordings"> = {};

/** A flag that the kind of file does not know, or a stretch that ends before it begins. */
function unfitFlag({ output, encoding, fullScale, decimal, from, to }: ConvertFlags, { words }: CliContext): string | null {
  const { converting } = words.terminal;
  const allowed: readonly string[] = ENCODINGS_OF[output.kind];
  if (encoding !== undefined && !allowed.includes(encoding))
    return converting.encodingUnfit(encoding, output.kind, words.numbers.any(allowed));
  if (fullScale !== undefined && output.kind !== "wav") return converting.fullScaleUnfit;
  if (decimal !== undefined && output.kind !== "csv" && output.kind !== "tsv") return converting.decimalUnfit;
  if (to !== undefined && to <= (from ?? 0)) return converting.stretchEmpty;
  return null;
}

/** The channels and the stretch that are wanted. */
async function chosenPart(
  { recording, path }: OpenRoadTest,
  { channel, from, to }: ConvertFlags,
  context: CliContext,
): Promise<Recording | Refusal> {
  const places: ChannelPlace[] = [];
  for (const name of channel ?? []) {
    const found = findChannel(recording, name);
    if (!found.ok) return { ok: false, code: BAD_USE, lines: [faultLine(found, path, {}, context)] };
    if (places.every((one) => one.channel !== found.value.channel)) places.push(found.value);
  }
  const wanted = places.length === 0 ? channelPlaces(recording) : places;
  const part = await partOfRecording(recording, wanted, { from: from ?? null, to: to ?? null });
  if (part.ok) return part.value;
  return { ok: false, code: BAD_USE, lines: [faultLine(part, path, { from, to }, context)] };
}

function refusalOf(found: TooLarge | RecordingFault, flags: ConvertFlags, path: string, context: CliContext): Refusal {
  if (found.code !== "too-large") return { ok: false, code: BAD_USE, lines: [faultLine(found, path, flags, context)] };
  const { numbers, terminal } = context.words;
  const { channel, reaches } = found;
  const scale = flags.fullScale ?? channel.fullScale ?? 0;
  return {
    ok: false,
    code: BAD_USE,
    lines: [terminal.converting.tooLarge(channel.id, numbers.plain(reaches, 3), numbers.plain(scale, 3))],
  };
}

interface Cut {
  readonly from?: number | undefined;
  readonly to?: number | undefined;
}

function faultLine(fault: RecordingFault, path: string, { from, to }: Cut, { words }: CliContext): string {
  const cut = from !== undefined || to !== undefined;
  if (cut && fault.code === "recording.no-samples") return words.terminal.converting.outside(path);
  return `${path}: ${recordingFaultText(words.recording, fault, words.numbers)}`;
}

/** A fault that turned up only while the file was being written. */
class Broken extends Error {
  override readonly name = "Broken";
  constructor(readonly fault: RecordingFault) {
    super(fault.code);
  }
}

async function* bytesOf(parts: AsyncIterable<RecordingResult<Uint8Array>>): AsyncGenerator<Uint8Array> {
  for await (const part of parts) {
    if (!part.ok) throw new Broken(part);
    yield part.value;
    await pause();
  }
}

/** Says what was written, and what the case has to say about the file. */
function report(written: WrittenRecording, { settings }: OpenRoadTest, { output, json }: ConvertFlags, context: CliContext): void {
  const { words, process } = context;
  const { converting } = words.terminal;
  const { recording, findings, scales } = written;
  const entry = caseEntry(output.path, written, settings);
  const [first] = recording.tracks;
  // Half a step is what the rounding of stamps may leave.
  const late = scales !== null && first?.clock.kind === "even" && Math.abs(first.clock.start * first.clock.rate) > 0.5;
  const start = late && first?.clock.kind === "even" ? first.clock.start : 0;
  if (json) {
    const found = { format: "halfturn-conversion", version: 1, kind: output.kind, recording: entry, startS: start, findings };
    process.stdout.write(jsonText(found));
    return;
  }
  const names = recording.tracks.flatMap(({ channels }) => channels.map(({ name }) => name));
  process.stdout.write(`${converting.written(output.path, names.join(", "))}\n`);
  if (scales !== null) process.stdout.write(`${converting.entry}\n${jsonText(entry)}`);
  if (start !== 0) process.stderr.write(`${converting.startLost(words.numbers.plain(start, 3))}\n`);
  for (const finding of findings) process.stderr.write(`${findingText(words, finding).says}\n`);
}
