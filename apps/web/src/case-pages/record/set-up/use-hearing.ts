import { useEffect, useRef, useState } from "react";
import { hearRecording } from "../../../worker/listening/listening-client.js";
import type { HearRequest, HearResult } from "../../../worker/listening/listening-types.js";

export interface Hearing {
  /** null before it is asked for, and while it is worked out. */
  readonly result: HearResult | null;
  /** Whether it was asked for by name, and not because a stretch was moved. */
  readonly isFresh: boolean;
  /** Share done; null where nothing is being worked out. */
  readonly progress: number | null;
  readonly start: (request: HearRequest) => void;
  /** The same once more of another stretch: the answer before stays in sight until the next is there. */
  readonly again: (request: HearRequest) => void;
  readonly stop: () => void;
  /** Takes the answer away: what was asked has changed. */
  readonly forget: () => void;
}

/** Lets the worker say which part a vibration follows; one piece of work at a time. */
export function useHearing(): Hearing {
  const [result, setResult] = useState<HearResult | null>(null);
  const [isFresh, setFresh] = useState(false);
  const [progress, setProgress] = useState<number | null>(null);
  const running = useRef<AbortController | null>(null);
  const stop = (): void => {
    running.current?.abort();
    running.current = null;
    setProgress(null);
  };
  const forget = (): void => {
    stop();
    setResult(null);
  };
  const start = (request: HearRequest): void => {
    setResult(null);
    run(request, true);
  };
  const again = (request: HearRequest): void => run(request, false);
  const run = (request: HearRequest, fresh: boolean): void => {
    stop();
    setFresh(fresh);
    const own = new AbortController();
    running.current = own;
    setProgress(0);
    // Word of how far it is may come after the answer itself.
    const onProgress = (share: number): void => {
      if (running.current === own) setProgress(share);
    };
    hearRecording(request, { signal: own.signal, onProgress })
      .then(setResult, (reason: unknown) => {
        if (!own.signal.aborted) throw reason;
      })
      .finally(() => {
        if (running.current !== own) return;
        running.current = null;
        setProgress(null);
      });
  };
  useEffect(() => () => running.current?.abort(), []);
  return { result, isFresh, progress, start, again, stop, forget };
}
