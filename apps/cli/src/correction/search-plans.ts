import { type CorrectionInput, type Outcome, type PlanOptions, type PlanResult, plan } from "@halfturn/engine/correction";
import type { CliContext } from "../program/context.js";

/** Erases the line from the cursor on. */
const ERASE = "\r\u001B[K";

/** Searches with its progress on a terminal, until done or until the user asks to stop. */
export async function searchPlans(
  input: CorrectionInput,
  options: PlanOptions,
  { quiet }: { readonly quiet: boolean },
  { process: { stderr }, words, onStop }: CliContext,
): Promise<Outcome<PlanResult> | "stopped"> {
  const stop = new AbortController();
  const deaf = onStop(() => stop.abort());
  const show = stderr.isTTY === true && !quiet;
  let last = "";
  const onProgress = (share: number): void => {
    const line = words.correction.searching(words.numbers.share(share));
    if (line !== last) stderr.write(`\r${line}`);
    last = line;
  };
  try {
    return await plan(input, options, {
      signal: stop.signal,
      // A timer, not a promise: the interrupt has to get its turn.
      pause: () => new Promise((resolve) => setTimeout(resolve)),
      ...(show ? { onProgress } : {}),
    });
  } catch (error) {
    if (stop.signal.aborted && error === stop.signal.reason) return "stopped";
    throw error;
  } finally {
    deaf();
    if (last !== "") stderr.write(ERASE);
  }
}
