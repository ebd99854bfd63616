/** 20 MB: a case is text and numbers; recordings stay outside it. */
export const MAX_CASE_BYTES = 20_000_000;
/** Deeper than any case; beyond some thousands a program's stack would end. */
export const MAX_CASE_LEVELS = 64;

const [QUOTE, BACKSLASH, OPEN_BRACE, CLOSE_BRACE, OPEN_BRACKET, CLOSE_BRACKET] = [0x22, 0x5c, 0x7b, 0x7d, 0x5b, 0x5d];

/** Bytes of a text in UTF-8. */
export function utf8Bytes(text: string): number {
  let bytes = 0;
  for (let k = 0; k < text.length; k++) {
    const unit = text.charCodeAt(k);
    // Each half of a surrogate pair stands for two of the pair's four bytes.
    if (unit < 0x80) bytes += 1;
    else if (unit < 0x800 || (unit >= 0xd800 && unit <= 0xdfff)) bytes += 2;
    else bytes += 3;
  }
  return bytes;
}

/** How deeply brackets nest in a JSON text, read before parsing; brackets inside strings do not count. Stops counting at `limit + 1`. */
export function nestingLevels(text: string, limit: number): number {
  let level = 0;
  let deepest = 0;
  let inString = false;
  for (let k = 0; k < text.length && deepest <= limit; k++) {
    const unit = text.charCodeAt(k);
    if (inString) {
      if (unit === BACKSLASH) k++;
      else if (unit === QUOTE) inString = false;
    } else if (unit === QUOTE) inString = true;
    else if (unit === OPEN_BRACE || unit === OPEN_BRACKET) deepest = Math.max(deepest, ++level);
    else if (unit === CLOSE_BRACE || unit === CLOSE_BRACKET) level--;
  }
  return deepest;
}
