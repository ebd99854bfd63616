import type { Catalogue } from "@halfturn/words";

/** A whole number within bounds; the error says what to write instead. Throwing is how a flag's parser reports. */
export function wholeNumber(input: string, least: number, most: number, { terminal, numbers }: Catalogue): number {
  const value = /^\d+$/.test(input) ? Number(input) : Number.NaN;
  if (value >= least && value <= most) return value;
  throw new Error(terminal.usage.wholeNumber(numbers.plain(least, 0), numbers.plain(most, 0)));
}
