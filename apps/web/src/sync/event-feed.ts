import type { CaseEvent } from "@halfturn/exchange";

const REOPEN_MS = 3000;

export interface FeedListener {
  readonly changed: (event: CaseEvent) => void;
  /** The list has to be read anew: at first, and after too long a break. */
  readonly fresh: () => void;
  readonly lost: () => void;
}

/** Listens to what other devices save. A browser reopens a stream that breaks; one that was refused is opened again here. */
export function listenToEvents({ changed, fresh, lost }: FeedListener): () => void {
  let source: EventSource | null = null;
  let reopening: ReturnType<typeof setTimeout> | undefined;
  const open = (): void => {
    source = new EventSource("/api/events");
    source.addEventListener("case", ({ data }: MessageEvent<string>) => changed(JSON.parse(data) as CaseEvent));
    source.addEventListener("fresh", fresh);
    source.addEventListener("open", fresh);
    source.addEventListener("error", () => {
      lost();
      if (source?.readyState !== EventSource.CLOSED) return;
      clearTimeout(reopening);
      reopening = setTimeout(open, REOPEN_MS);
    });
  };
  open();
  return () => {
    clearTimeout(reopening);
    source?.close();
  };
}
