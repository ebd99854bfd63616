import { type Recording, type RecordingResult, writeCsv, writeWav } from "@halfturn/recordings";
import { type RecordingFile, recordingFile } from "../recording-file.js";
import type { PhoneKind } from "./phone-kind.js";

/** "2026-05-04-0730", on the clock of the device. */
export function momentText(now: Date): string {
  const two = (value: number): string => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}-${two(now.getHours())}${two(now.getMinutes())}${two(now.getSeconds())}`;
}

/** A recording as a file: sound as WAV, motion as a table. null where the format cannot hold it. */
export async function writtenFile(recording: Recording, kind: PhoneKind, name: string, now: Date): Promise<RecordingFile | null> {
  const isWhole = recording.tracks[0]?.clock.kind === "even" && Number.isInteger(recording.tracks[0].clock.rate);
  const asWav = kind === "sound" && isWhole;
  const written = asWav ? writeWav(recording, { encoding: "pcm24", fullScale: 1 }) : writeCsv(recording, { separator: ",", decimal: "." });
  const content = await blobOf(written, asWav ? "audio/wav" : "text/csv");
  return content && recordingFile(`${name}.${asWav ? "wav" : "csv"}`, content, now.toISOString());
}

async function blobOf(parts: AsyncIterable<RecordingResult<Uint8Array>>, type: string): Promise<Blob | null> {
  const kept: BlobPart[] = [];
  for await (const part of parts) {
    if (!part.ok) return null;
    kept.push(part.value as Uint8Array<ArrayBuffer>);
  }
  return new Blob(kept, { type });
}
