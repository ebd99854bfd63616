const [ZERO, NINE, PLUS, MINUS, SPACE, TAB, E, D, LOWER] = [0x30, 0x39, 0x2b, 0x2d, 0x20, 0x09, 0x65, 0x64, 0x20];
/** Powers of ten that a double holds exactly; with a mantissa below 2^53, one product or quotient is then rounded once. Source: W. D. Clinger, PLDI 1990. */
const POWERS = Array.from({ length: 23 }, (_, power) => 10 ** power);
const EXACT = 2 ** 53;

export const POINT = 0x2e;
export const COMMA = 0x2c;

/**
 * The number that stands alone in bytes[from, to), blanks aside; NaN where there is no finite one. Rounded as `Number` rounds.
 * `mark` is the decimal sign; an exponent may be marked e or d, as Fortran writes.
 */
export function parseNumber(bytes: Uint8Array, from: number, to: number, mark: number): number {
  const start = skipBlanks(bytes, from, to);
  const end = endOfBlanks(bytes, start, to);
  let at = start;
  const sign = bytes[at] as number;
  if (at < end && (sign === MINUS || sign === PLUS)) at++;
  let mantissa = 0;
  let digits = 0;
  let scale = 0;
  let fraction = 0;
  for (; at < end; at++) {
    const byte = bytes[at] as number;
    if (byte >= ZERO && byte <= NINE) {
      mantissa = mantissa * 10 + (byte - ZERO);
      scale += fraction;
      digits++;
    } else if (byte === mark && fraction === 0) fraction = 1;
    else break;
  }
  if (digits === 0) return Number.NaN;
  let exponent = 0;
  if (at < end) {
    const read = exponentAt(bytes, at, end);
    if (read === null) return Number.NaN;
    exponent = read;
  }
  const power = exponent - scale;
  if (mantissa >= EXACT || power > 22 || power < -22) return slowly(bytes, start, end, mark);
  const size = power < 0 ? mantissa / (POWERS[-power] as number) : mantissa * (POWERS[power] as number);
  return sign === MINUS ? -size : size;
}

function skipBlanks(bytes: Uint8Array, from: number, to: number): number {
  let at = from;
  while (at < to && isBlank(bytes[at] as number)) at++;
  return at;
}

function endOfBlanks(bytes: Uint8Array, from: number, to: number): number {
  let end = to;
  while (end > from && isBlank(bytes[end - 1] as number)) end--;
  return end;
}

const isBlank = (byte: number): boolean => byte === SPACE || byte === TAB;

/** "e-05", "D+003": the whole rest, or null. */
function exponentAt(bytes: Uint8Array, from: number, end: number): number | null {
  const letter = (bytes[from] as number) | LOWER;
  if (letter !== E && letter !== D) return null;
  let at = from + 1;
  const sign = bytes[at] as number;
  if (sign === MINUS || sign === PLUS) at++;
  if (at >= end) return null;
  let exponent = 0;
  for (; at < end; at++) {
    const byte = bytes[at] as number;
    if (byte < ZERO || byte > NINE) return null;
    exponent = Math.min(exponent * 10 + (byte - ZERO), 99_999);
  }
  return sign === MINUS ? -exponent : exponent;
}

/** More characters than any number needs. */
const LONGEST = 400;

/** The same by the platform, for more digits than a double multiplies exactly; the form has been seen to be a number's. */
function slowly(bytes: Uint8Array, from: number, to: number, mark: number): number {
  if (to - from > LONGEST) return Number.NaN;
  let text = "";
  for (let at = from; at < to; at++) {
    const byte = bytes[at] as number;
    if (byte === mark) text += ".";
    else text += (byte | LOWER) === D ? "e" : String.fromCharCode(byte);
  }
  const value = Number(text);
  return Number.isFinite(value) ? value : Number.NaN;
}
