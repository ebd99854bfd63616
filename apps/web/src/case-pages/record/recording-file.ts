/** A recording at hand, from wherever it came. */
export interface RecordingFile {
  /** Its own for each opening, so that the same file can be opened anew. */
  readonly key: number;
  readonly name: string;
  readonly content: Blob;
  /** ISO 8601; null where nobody knows. */
  readonly recordedAt: string | null;
  /** Whether it came from the device's own shelf, where it stays as it is. */
  readonly isKept: boolean;
}

let opened = 0;

export function recordingFile(name: string, content: Blob, recordedAt: string | null, isKept = false): RecordingFile {
  opened += 1;
  return { key: opened, name, content, recordedAt, isKept };
}
