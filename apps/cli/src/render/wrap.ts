import { widthOf } from "./paint.js";

/** Narrow terminals get 60 columns; wide ones no more than 100, which is as long as a line reads well. */
export const pageWidth = (columns: number | undefined): number => Math.min(100, Math.max(60, columns ?? 80));

/** Breaks a sentence into indented lines. The first line may hang out to the left of the others. */
export function wrap(text: string, width: number, indent: string, firstIndent = indent): readonly string[] {
  const lines: string[] = [];
  let line = firstIndent;
  let empty = true;
  for (const word of text.split(" ")) {
    if (!empty && widthOf(line) + 1 + widthOf(word) > width) {
      lines.push(line);
      line = indent;
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line];
}
