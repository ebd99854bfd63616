import { useCallback, useEffect, useState } from "react";
import type { RecordingFile } from "../recording-file.js";
import { abandonedTakes } from "./take-lock.js";
import { takeRecording } from "./take-recording.js";
import { type TakeChunk, type TakeHead, takeStore } from "./take-store.js";
import { writtenFile } from "./written-file.js";

export interface Takes {
  /** Takes of this case that were never made into a file, and that nobody records any more. */
  readonly left: readonly TakeHead[];
  /** Makes a take into a file and hands it on; false where nothing was sensed. */
  readonly finish: (head: TakeHead, chunks: readonly TakeChunk[]) => Promise<boolean>;
  /** The same of one that was left. */
  readonly finishLeft: (head: TakeHead) => Promise<boolean>;
  readonly forget: (head: TakeHead) => Promise<void>;
}

export interface TakesInput {
  readonly caseId: string;
  readonly nameOf: (startedAt: Date) => string;
  /** Whether the file outlives the page; until then the take stays where it is. */
  readonly onFile: (file: RecordingFile) => Promise<boolean>;
}

/** What becomes of the takes of a case. */
export function useTakes({ caseId, nameOf, onFile }: TakesInput): Takes {
  const [left, setLeft] = useState<readonly TakeHead[]>([]);
  const look = useCallback(async (): Promise<void> => {
    // A browser that keeps nothing has nothing left.
    const takes = await takeStore.of(caseId).catch(() => []);
    setLeft(takes.length === 0 ? takes : await abandonedTakes(takes));
  }, [caseId]);
  useEffect(() => void look(), [look]);
  const forget = async (head: TakeHead): Promise<void> => {
    await takeStore.drop(head.id).catch(() => undefined);
    await look();
  };
  const finish = async (head: TakeHead, chunks: readonly TakeChunk[]): Promise<boolean> => {
    const recording = takeRecording(head, chunks);
    const startedAt = new Date(head.startedAt);
    const file = recording && (await writtenFile(recording, head.kind, nameOf(startedAt), startedAt));
    if (file && !(await onFile(file))) return true;
    await forget(head);
    return file !== null;
  };
  const finishLeft = async (head: TakeHead): Promise<boolean> => finish(head, await takeStore.chunks(head.id));
  return { left, finish, finishLeft, forget };
}
