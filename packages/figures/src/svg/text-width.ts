/**
 * Advance widths in hundredths of the font size, U+0020 to U+007E, of DejaVu Sans (read from the font file). It is wider than the other faces of the family
 * list, so text laid out by it never collides where another face is used.
 */
const ADVANCES = [
  32, 41, 46, 84, 64, 96, 78, 28, 40, 40, 50, 84, 32, 37, 32, 34, 64, 64, 64, 64, 64, 64, 64, 64, 64, 64, 34, 34, 84, 84, 84, 54, 100, 69,
  69, 70, 77, 64, 58, 78, 76, 30, 30, 66, 56, 87, 75, 79, 61, 79, 70, 64, 62, 74, 69, 99, 69, 62, 69, 40, 34, 40, 84, 50, 50, 62, 64, 55,
  64, 62, 36, 64, 64, 28, 28, 58, 28, 98, 64, 62, 64, 64, 42, 53, 40, 64, 60, 82, 60, 60, 53, 64, 34, 64, 84,
];
/** The bold face is up to a fifth wider, figures and lower case a tenth; measured over English and Spanish labels at most 1.13. */
const BOLD = 1.13;

function advance(codePoint: number): number {
  const known = ADVANCES[codePoint - 0x20];
  if (known !== undefined) return known;
  if (codePoint >= 0x300 && codePoint <= 0x36f) return 0;
  if (codePoint === 0xb0 || codePoint === 0xb2) return 50;
  if (codePoint < 0x400) return 84;
  return codePoint < 0x1100 || (codePoint >= 0x2000 && codePoint < 0x2e80) ? 110 : 130;
}

/** Width of a text in pixels, on the safe side. */
export function textWidth(text: string, size: number, bold = false): number {
  let width = 0;
  for (const sign of text) width += advance(sign.codePointAt(0) as number);
  return (width / 100) * size * (bold ? BOLD : 1);
}

const ELLIPSIS = "…";

/** The text, or as much of it as fits with an ellipsis. */
export function fitText(text: string, room: number, size: number, bold = false): string {
  if (textWidth(text, size, bold) <= room) return text;
  const signs = [...text];
  while (signs.length > 0 && textWidth(`${signs.join("").trimEnd()}${ELLIPSIS}`, size, bold) > room) signs.pop();
  return signs.length === 0 ? "" : `${signs.join("").trimEnd()}${ELLIPSIS}`;
}

/** Breaks a text at spaces into lines that fit; a word too long for a line is cut. */
export function wrapText(text: string, room: number, size: number, bold = false): readonly string[] {
  const lines: string[] = [];
  let current = "";
  for (const word of text.split(/\s+/)) {
    const longer = current === "" ? word : `${current} ${word}`;
    if (textWidth(longer, size, bold) <= room) current = longer;
    else {
      if (current !== "") lines.push(current);
      current = fitText(word, room, size, bold);
    }
  }
  return current === "" ? lines : [...lines, current];
}
