import type { Case, CaseRecording } from "@halfturn/casefile";
import type { ChannelScale } from "@halfturn/recordings";

export interface KeptRecording {
  readonly file: string;
  readonly recordedAt: string | null;
  readonly gear: string | null;
  readonly scales: readonly ChannelScale[];
  readonly perTurn: number | null;
  readonly filter: number | null;
}

/** What the case says of a recording: the file, its gear, and what its channels are. Keys that are not known are left out. */
export function recordingEntry(kept: KeptRecording): CaseRecording {
  const { file, recordedAt, gear, scales, perTurn, filter } = kept;
  const channels = scales.flatMap(({ id, name, unit, fullScale, sensitivity }) => {
    const known = Object.entries({ name, unit, fullScale, sensitivity }).filter(([, value]) => value !== undefined);
    return known.length === 0 ? [] : [{ id, ...Object.fromEntries(known) }];
  });
  return {
    file,
    ...(recordedAt === null ? {} : { recordedAt }),
    ...(gear === null ? {} : { gear }),
    ...(channels.length === 0 ? {} : { channels }),
    ...(perTurn === null || perTurn === 1 ? {} : { pulsesPerTurn: perTurn }),
    ...(filter === null ? {} : { filterHz: filter }),
  };
}

/** Puts a recording into the case; one of the same file is brought up to date, and what else was said of it stays. */
export const keepRecording =
  (entry: CaseRecording) =>
  (document: Case): Case => {
    const { recordings = [] } = document;
    const place = recordings.findIndex(({ file }) => file === entry.file);
    if (place < 0) return { ...document, recordings: [...recordings, entry] };
    return { ...document, recordings: recordings.map((one, k) => (k === place ? { ...one, ...entry } : one)) };
  };

/** Takes a recording out of the case. The file itself is left alone. */
export const dropRecording =
  (file: string) =>
  ({ recordings = [], ...document }: Case): Case => {
    const left = recordings.filter((one) => one.file !== file);
    return left.length === 0 ? document : { ...document, recordings: left };
  };
