/** A number as it stands in a text. `end` is the place after it. */
export interface ScannedNumber {
  readonly amount: number;
  readonly whole: boolean;
  readonly end: number;
}

export interface NumberFault {
  readonly code: "quantity.second-decimal-sign" | "quantity.zero-denominator" | "quantity.improper-fraction" | "quantity.too-large";
  readonly at: number;
}

/** Blanks people type or paste: space, tab, no-break, figure, thin and narrow no-break space. */
export const BLANKS = "[ \\t\\u00a0\\u2007\\u2009\\u202f]";
const SLASH = "[/\\u2044]";

const VULGAR_FRACTIONS: Readonly<Record<string, number>> = {
  "½": 1 / 2,
  "¼": 1 / 4,
  "¾": 3 / 4,
  "⅛": 1 / 8,
  "⅜": 3 / 8,
  "⅝": 5 / 8,
  "⅞": 7 / 8,
};
const VULGAR = `[${Object.keys(VULGAR_FRACTIONS).join("")}]`;

/** 1 1/8 or 1-1/8 or 1/8; 1½ or ½; 3.4 or 3,4 or .5 or 5. */
const FRACTION = new RegExp(`(?:(\\d+)(?:${BLANKS}+|-))?(\\d+)${SLASH}(\\d+)`, "y");
const VULGAR_FRACTION = new RegExp(`(?:(\\d+)${BLANKS}*)?(${VULGAR})`, "y");
const DECIMAL = /\d+(?:[.,]\d*)?|[.,]\d+/y;

function matchAt(pattern: RegExp, text: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at;
  return pattern.exec(text);
}

/**
 * The unsigned number that stands at a place of a text; null where none does.
 * Point and comma are both the decimal sign and there is no sign for thousands, so "1,234" is 1.234 and a second sign is a fault.
 */
export function scanNumber(text: string, at: number): ScannedNumber | NumberFault | null {
  return scanFraction(text, at) ?? scanVulgarFraction(text, at) ?? scanDecimal(text, at);
}

function scanFraction(text: string, at: number): ScannedNumber | NumberFault | null {
  const match = matchAt(FRACTION, text, at);
  if (match === null) return null;
  const [all, whole, top, bottom] = match as unknown as [string, string | undefined, string, string];
  const end = at + all.length;
  const [numerator, denominator] = [Number(top), Number(bottom)];
  if (denominator === 0) return { code: "quantity.zero-denominator", at: end - bottom.length };
  if (whole !== undefined && numerator >= denominator) return { code: "quantity.improper-fraction", at: end - `${top}/${bottom}`.length };
  return scanned(Number(whole ?? 0) + numerator / denominator, false, at, end);
}

function scanVulgarFraction(text: string, at: number): ScannedNumber | NumberFault | null {
  const match = matchAt(VULGAR_FRACTION, text, at);
  if (match === null) return null;
  const [all, whole, fraction] = match as unknown as [string, string | undefined, string];
  return scanned(Number(whole ?? 0) + (VULGAR_FRACTIONS[fraction] as number), false, at, at + all.length);
}

function scanDecimal(text: string, at: number): ScannedNumber | NumberFault | null {
  const match = matchAt(DECIMAL, text, at);
  if (match === null) return null;
  const [all] = match;
  const end = at + all.length;
  if (/[.,]/.test(text.charAt(end))) return { code: "quantity.second-decimal-sign", at: end };
  return scanned(Number(all.replace(",", ".")), !/[.,]/.test(all), at, end);
}

const scanned = (amount: number, whole: boolean, at: number, end: number): ScannedNumber | NumberFault =>
  Number.isFinite(amount) ? { amount, whole, end } : { code: "quantity.too-large", at };
