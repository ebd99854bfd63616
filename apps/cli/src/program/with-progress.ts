import type { LongWork } from "@halfturn/engine/uncertainty";
import type { CliContext } from "./context.js";

/** Erases the line from the cursor on. */
const ERASE = "\r\u001B[K";

/** Does long work with its progress on a terminal, until done or until the user asks to stop. */
export async function withProgress<Value>(
  { process: { stderr }, words, onStop }: CliContext,
  { quiet, say }: { readonly quiet: boolean; readonly say: (share: string) => string },
  work: (long: LongWork) => Promise<Value>,
): Promise<Value | "stopped"> {
  const stop = new AbortController();
  const deaf = onStop(() => stop.abort());
  const show = stderr.isTTY === true && !quiet;
  let last = "";
  const onProgress = (share: number): void => {
    const line = say(words.numbers.share(share));
    if (line !== last) stderr.write(`\r${line}`);
    last = line;
  };
  try {
    return await work({ signal: stop.signal, ...(show ? { onProgress } : {}) });
  } catch (error) {
    if (stop.signal.aborted && error === stop.signal.reason) return "stopped";
    throw error;
  } finally {
    deaf();
    if (last !== "") stderr.write(ERASE);
  }
}
