import { readFile, stat } from "node:fs/promises";
import { type Case, MAX_CASE_BYTES, type Problem, restore } from "@halfturn/casefile";
import { type Catalogue, problemText } from "@halfturn/words";
import type { CliContext } from "../program/context.js";
import { readFault } from "./file-fault.js";

/** The name under which standard input is asked for. */
export const STANDARD_INPUT = "-";

/** What to call the file in a sentence. */
export const fileName = (path: string, words: Catalogue): string => (path === STANDARD_INPUT ? words.terminal.files.standardInput : path);

/** A case, or one line for each reason why there is none. */
export type CaseRead = { readonly ok: true; readonly case: Case } | { readonly ok: false; readonly lines: readonly string[] };

/** Reads and restores a case. A file that is too large is refused by its size, before any of it is read. */
export async function readCase(path: string, context: CliContext): Promise<CaseRead> {
  const { words } = context;
  const name = fileName(path, words);
  let bytes: Uint8Array;
  try {
    if (path === STANDARD_INPUT) bytes = await context.readStandardInput(MAX_CASE_BYTES);
    else {
      const { size } = await stat(path);
      if (size > MAX_CASE_BYTES) return tooLarge(name, size, words);
      bytes = await readFile(path);
    }
  } catch (error) {
    return { ok: false, lines: [readFault(error, name, "case", words.terminal)] };
  }
  if (bytes.length > MAX_CASE_BYTES) return tooLarge(name, bytes.length, words);
  const text = decode(bytes);
  if (text === null) return { ok: false, lines: [words.terminal.files.notUtf8(name)] };
  const restored = restore(text);
  return restored.ok ? restored : { ok: false, lines: linesOf(name, restored.problems, words) };
}

const linesOf = (name: string, problems: readonly Problem[], words: Catalogue): readonly string[] =>
  problems.map((problem) => `${name}: ${problemText(words, problem)}`);

const tooLarge = (name: string, bytes: number, words: Catalogue): CaseRead => ({
  ok: false,
  lines: linesOf(name, [{ code: "too-large", path: "", params: { of: "bytes", got: bytes, limit: MAX_CASE_BYTES } }], words),
});

function decode(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}
