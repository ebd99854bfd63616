import type { ChannelScale } from "@halfturn/recordings";
import { proxy, type Remote, wrap } from "comlink";
import type { Listening } from "./listening.js";
import type { HearRequest } from "./listening-types.js";

type Answer<Name extends keyof Listening> = Awaited<ReturnType<Listening[Name]>>;

let made: Remote<Listening> | null = null;
/** A worker of its own: long work on a recording never keeps the numbers of a case waiting. */
function worker(): Remote<Listening> {
  made ??= wrap<Listening>(new Worker(new URL("./listening-worker.ts", import.meta.url), { type: "module", name: "listening" }));
  return made;
}

export interface Watched {
  readonly onProgress: (share: number) => void;
  readonly signal: AbortSignal;
}

let works = 0;

/** Asks for long work. Rejects with the signal's reason at once when stopped; the worker follows within a piece of its work. */
function watched<Made>(
  { onProgress, signal }: Watched,
  ask: (work: number, progress: (share: number) => void) => Promise<Made>,
): Promise<Made> {
  works += 1;
  const work = works;
  return new Promise((resolve, reject) => {
    if (signal.aborted) {
      reject(signal.reason);
      return;
    }
    const stop = (): void => {
      void worker().stop(work);
      reject(signal.reason);
    };
    signal.addEventListener("abort", stop, { once: true });
    const progress = proxy((share: number) => {
      if (!signal.aborted) onProgress(share);
    });
    ask(work, progress)
      .then(resolve, reject)
      .finally(() => signal.removeEventListener("abort", stop));
  });
}

/** Opens a file by what is in it; its samples are not read yet. */
export const openFile = (file: Blob, scales: readonly ChannelScale[]): Promise<Answer<"open">> => worker().open(file, scales);

/** Ends with the open file: what was put aside of it is removed. */
export const closeFile = (): Promise<void> => worker().close();

/** Reads channels of the open file at even steps of time. */
export const readChannels = (ids: readonly string[], watch: Watched): Promise<Answer<"read">> =>
  watched<Answer<"read">>(watch, async (work, progress) => worker().read(ids, work, progress));

/** Least and greatest sample of each column, of one of the channels that were read; null where none was. */
export const envelope = (channel: number, from: number, to: number, columns: number): Promise<Answer<"envelope">> =>
  worker().envelope(channel, from, to, columns);

export const spectrum = (channel: number, from: number, to: number): Promise<Answer<"spectrum">> => worker().spectrum(channel, from, to);

/** Says which part the channels that were read follow. */
export const hearRecording = (request: HearRequest, watch: Watched): Promise<Answer<"hear">> =>
  watched<Answer<"hear">>(watch, async (work, progress) => worker().hear(request, work, progress));
