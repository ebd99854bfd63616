import type { Bounds } from "@halfturn/casefile";
import type { Numbers } from "./numbers/numbers.js";

export interface BoundWords {
  readonly atLeast: (bound: string) => string;
  readonly above: (bound: string) => string;
  readonly atMost: (bound: string) => string;
  readonly below: (bound: string) => string;
  readonly and: string;
}

/** As many decimals as the number was written with, six at most. */
export function written(value: number, numbers: Numbers): string {
  const [, fraction = ""] = String(value).split(".");
  return numbers.plain(value, Math.min(fraction.length, 6));
}

/** "at least 0 and less than 90". */
export function boundsText(bounds: Bounds, numbers: Numbers, words: BoundWords): string {
  const parts: string[] = [];
  if (bounds.minimum !== undefined) parts.push(words.atLeast(written(bounds.minimum, numbers)));
  if (bounds.above !== undefined) parts.push(words.above(written(bounds.above, numbers)));
  if (bounds.maximum !== undefined) parts.push(words.atMost(written(bounds.maximum, numbers)));
  if (bounds.below !== undefined) parts.push(words.below(written(bounds.below, numbers)));
  return parts.join(` ${words.and} `);
}

/** "3.1" for a text that is a number but for a decimal comma, a degree sign or its quotes; null for any other text. */
export function numberMeant(value: string): string | null {
  const [, digits] = /^\s*([+-]?\d+(?:[.,]\d+)?)\s*(?:°|mm|deg)?\s*$/i.exec(value) ?? [];
  return digits === undefined ? null : digits.replace(",", ".").replace(/^\+/, "");
}

/** A negative number where only its size is asked for. */
export const isSigned = ({ got, minimum }: Bounds & { readonly got: number }): boolean => got < 0 && minimum === 0;

/** What to write instead: the word that was most likely meant, if one was, and all that may stand there. */
export function choices(
  { suggestion, allowed }: { readonly suggestion?: string | undefined; readonly allowed: readonly string[] },
  numbers: Numbers,
  words: { readonly write: (allowed: string) => string; readonly meant: (suggestion: string, allowed: string) => string },
): string {
  const all = numbers.any(allowed);
  return suggestion === undefined ? words.write(all) : words.meant(suggestion, all);
}
