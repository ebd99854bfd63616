import { parseNumber } from "../bytes/parse-number.js";

/** How a logger says that it has no value. */
const MISSING = new Set(["", "nan", "na", "n/a", "null", "-", "--", "none", "#n/a"]);
const LONGEST_WORD = 8;

/** What a cell holds: a number, nothing, or something else. */
export type CellValue = { readonly kind: "number"; readonly value: number } | { readonly kind: "missing" } | { readonly kind: "other" };

/** Whether a cell's text says that there is no value. */
export const isMissing = (text: string): boolean => text.length <= LONGEST_WORD && MISSING.has(text.trim().toLowerCase());

/** Reads a cell's text; `mark` is the byte of the decimal sign. */
export function cellValue(text: string, mark: number): CellValue {
  const trimmed = text.trim();
  if (isMissing(trimmed)) return { kind: "missing" };
  const bytes = Uint8Array.from(trimmed, (letter) => Math.min(letter.charCodeAt(0), 0xff));
  const value = parseNumber(bytes, 0, bytes.length, mark);
  return Number.isNaN(value) ? { kind: "other" } : { kind: "number", value };
}
