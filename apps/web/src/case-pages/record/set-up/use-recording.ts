import type { RecordingFault } from "@halfturn/engine/findings";
import type { ChannelScale } from "@halfturn/recordings";
import { useEffect, useState } from "react";
import { closeFile, openFile, readChannels } from "../../../worker/listening/listening-client.js";
import type { Look, ReadChannels, ReadResult } from "../../../worker/listening/listening-types.js";
import type { RecordingFile } from "../recording-file.js";

/** A fault of null: the file itself can no longer be read. */
type Opened = { readonly ok: true; readonly look: Look } | { readonly ok: false; readonly fault: RecordingFault | null };
type Read =
  | { readonly ok: true; readonly channels: ReadChannels }
  | { readonly ok: false; readonly fault: ReadResult & { readonly ok: false } };

export interface RecordingAtWork {
  /** null while it is being opened. */
  readonly opened: Opened | null;
  /** null while it is being read, or where nothing is chosen. */
  readonly read: Read | null;
  /** Share of the reading done. */
  readonly progress: number;
  readonly ids: readonly string[];
  readonly choose: (ids: readonly string[]) => void;
}

/** Opens a file with what is known of its channels, and reads those that are chosen; what was asked for last is what is shown. */
export function useRecording({ content }: RecordingFile, scales: readonly ChannelScale[]): RecordingAtWork {
  const [opened, setOpened] = useState<Opened | null>(null);
  const [read, setRead] = useState<Read | null>(null);
  const [progress, setProgress] = useState(0);
  const [wanted, choose] = useState<readonly string[] | null>(null);
  useEffect(() => {
    let isWanted = true;
    const show = (next: Opened): void => {
      if (!isWanted) return;
      setRead(null);
      setOpened(next);
    };
    openFile(content, scales).then(
      (answer) => show(answer.ok ? { ok: true, look: answer.value } : { ok: false, fault: answer }),
      () => show({ ok: false, fault: null }),
    );
    return () => {
      isWanted = false;
      void closeFile();
    };
  }, [content, scales]);
  const look = opened?.ok ? opened.look : null;
  const chosen = wanted?.filter((id) => look?.channels.some((channel) => channel.id === id && channel.heard)) ?? look?.best ?? [];
  const key = chosen.join("\n");
  useEffect(() => {
    if (!look || key === "") {
      setRead(null);
      return;
    }
    const stop = new AbortController();
    setProgress(0);
    setRead(null);
    readChannels(key.split("\n"), { signal: stop.signal, onProgress: setProgress }).then(
      (answer) => setRead(answer.ok ? { ok: true, channels: answer.value } : { ok: false, fault: answer }),
      (reason: unknown) => {
        // What was closed while it was being read is read again once it is open again.
        const isClosed = reason instanceof Error && reason.name === "AbortError";
        if (!stop.signal.aborted && !isClosed) setOpened({ ok: false, fault: null });
      },
    );
    return () => stop.abort();
  }, [look, key]);
  return { opened, read, progress, ids: chosen, choose };
}
