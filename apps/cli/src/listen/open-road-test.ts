import { type Case, type RecordingSettings, toRecordingSettings } from "@halfturn/casefile";
import { type ChannelPlace, channelPlaces, openRecording, type Recording } from "@halfturn/recordings";
import type { Catalogue } from "@halfturn/words";
import { readFault } from "../files/file-fault.js";
import { type OpenFile, openFile } from "../files/file-source.js";
import { BAD_USE } from "../program/exit-code.js";
import { faultRefusal, type Refusal } from "./refusal.js";

/** A recording that stands open, and what the case says of it. */
export interface OpenRoadTest {
  readonly ok: true;
  readonly path: string;
  readonly recording: Recording;
  readonly settings: RecordingSettings;
  readonly close: () => Promise<void>;
}

/** Opens a recording with units and full scales from the case. */
export async function openRoadTest(path: string, document: Pick<Case, "recordings">, words: Catalogue): Promise<OpenRoadTest | Refusal> {
  let file: OpenFile;
  try {
    file = await openFile(path);
  } catch (error) {
    return { ok: false, code: BAD_USE, lines: [readFault(error, path, "recording", words.terminal)] };
  }
  try {
    // What the case says of a whole recording is for channels of which the file says nothing; the first look finds those.
    const bare = await openRecording(file.source);
    if (!bare.ok) return await closing(file, faultRefusal(bare, path, words));
    const settings = toRecordingSettings(
      document,
      path,
      channelPlaces(bare.value)
        .filter(isUnitless)
        .map(({ channel }) => channel.id),
    );
    const scaled = await openRecording(file.source, settings.channels);
    if (!scaled.ok) return await closing(file, faultRefusal(scaled, path, words));
    return { ok: true, path, recording: scaled.value, settings, close: file.close };
  } catch (error) {
    // A disk may fail, or a name be no file, only when it is read.
    return closing(file, { ok: false, code: BAD_USE, lines: [readFault(error, path, "recording", words.terminal)] });
  }
}

const isUnitless = ({ channel: { quantity } }: ChannelPlace): boolean => ["share", "unknown", "voltage"].includes(quantity);

async function closing(file: OpenFile, refusal: Refusal): Promise<Refusal> {
  await file.close();
  return refusal;
}
