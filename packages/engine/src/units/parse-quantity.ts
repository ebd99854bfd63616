import { BLANKS, type NumberFault, scanNumber } from "./scan-number.js";
import { unitAt } from "./unit-spellings.js";
import { partOf, type QuantityKind, type SiOf, toSi, type Unit, type UnitOf } from "./unit-table.js";

/** Why a text is no quantity. `params` say what was found or allowed; the words live in the catalogue of a language. */
export type QuantityFaultCode =
  | NumberFault["code"]
  | "quantity.empty"
  | "quantity.number-expected"
  | "quantity.unexpected"
  | "quantity.unknown-unit"
  | "quantity.unit-of-another-kind"
  | "quantity.unit-expected"
  | "quantity.unit-out-of-order"
  | "quantity.part-too-large"
  | "quantity.fraction-before-part";

export interface QuantityFault {
  readonly ok: false;
  readonly code: QuantityFaultCode;
  /** Place in the text, counted from 0 in UTF-16 units as a text field counts. */
  readonly at: number;
  readonly params: Readonly<Record<string, string | number>>;
}

export interface ParsedQuantity<Kind extends QuantityKind> {
  readonly ok: true;
  /** In the SI unit of its kind. */
  readonly value: SiOf[Kind];
  /** The unit typed, the greatest of a compound, or the default where none was typed. */
  readonly unit: UnitOf<Kind>;
  /** What was typed, in that unit: 3.4 of "3,4°" to the last digit. */
  readonly amount: number;
}

interface Term {
  readonly amount: number;
  readonly whole: boolean;
  readonly unit: Unit | null;
  readonly at: number;
  readonly unitAt: number;
}

const SKIPPED = new RegExp(`${BLANKS}*`, "y");
const SIGN = /[+\-\u2212\u2013]/;
const NUMBER_START = /[\d.,½¼¾⅛⅜⅝⅞]/;
const UNKNOWN = new RegExp(`(?:(?!${BLANKS})\\D)+`, "y");

const fault = (code: QuantityFaultCode, at: number, params: QuantityFault["params"] = {}): QuantityFault => ({
  ok: false,
  code,
  at,
  params,
});

const isFault = (value: object): value is QuantityFault => "ok" in value;

function skipBlanks(text: string, at: number): number {
  SKIPPED.lastIndex = at;
  SKIPPED.exec(text);
  return SKIPPED.lastIndex;
}

/**
 * Reads what a person types as a quantity: "3,4", "-0.5", "3° 25'", "1 1/8 in", "12 mm", "5'3\"". A text without a unit is in the default unit.
 * Point and comma are both the decimal sign; there is no sign for thousands, so "1,234" is 1.234 and "1,234.5" a fault. Only the last part of a compound may be broken.
 * Typed words are symbols and abbreviations only. Zero is never negative. Never throws: what cannot be read comes back with its code and place.
 */
export function parseQuantity<Kind extends QuantityKind>(
  text: string,
  { kind, defaultUnit }: { readonly kind: Kind; readonly defaultUnit: UnitOf<Kind> },
): ParsedQuantity<Kind> | QuantityFault {
  let start = skipBlanks(text, 0);
  if (start === text.length) return fault("quantity.empty", 0);
  const sign = SIGN.test(text.charAt(start)) ? text.charAt(start) : "";
  if (sign) start = skipBlanks(text, start + 1);
  const terms = scanTerms(text, start, kind);
  if (isFault(terms)) return terms;
  const magnitude = joinTerms(terms);
  if (isFault(magnitude)) return magnitude;
  const amount = sign && sign !== "+" && magnitude.amount !== 0 ? -magnitude.amount : magnitude.amount;
  const unit = (terms[0]?.unit ?? defaultUnit) as UnitOf<Kind>;
  return { ok: true, value: toSi(amount, unit) as SiOf[Kind], unit, amount };
}

/** The text as numbers and their units, all of the kind. */
function scanTerms(text: string, start: number, kind: QuantityKind): readonly Term[] | QuantityFault {
  const terms: Term[] = [];
  let at = start;
  do {
    const found = text.charAt(at);
    const number = scanNumber(text, at);
    if (number === null) return terms.length > 0 ? fault("quantity.unexpected", at, { found }) : fault("quantity.number-expected", at);
    if ("code" in number) return fault(number.code, number.at);
    const afterNumber = skipBlanks(text, number.end);
    const unit = scanUnit(text, afterNumber, kind);
    if (unit !== null && isFault(unit)) return unit;
    terms.push({ amount: number.amount, whole: number.whole, unit: unit?.unit ?? null, at, unitAt: unit ? afterNumber : number.end });
    at = skipBlanks(text, unit?.end ?? afterNumber);
    if (unit === null && at < text.length) return fault("quantity.unexpected", at, { found: text.charAt(at) });
  } while (at < text.length);
  return terms;
}

/** The unit at a place; null at the end of the text and before another number. */
function scanUnit(text: string, at: number, kind: QuantityKind): { readonly unit: Unit; readonly end: number } | QuantityFault | null {
  if (at === text.length || NUMBER_START.test(text.charAt(at))) return null;
  const unit = unitAt(text, at, kind);
  if (unit === null) {
    UNKNOWN.lastIndex = at;
    return fault("quantity.unknown-unit", at, { found: UNKNOWN.exec(text)?.[0] ?? "" });
  }
  return unit.kind === kind ? unit : fault("quantity.unit-of-another-kind", at, { unit: unit.unit, kind: unit.kind, expected: kind });
}

/** The terms of a compound as one amount in the unit of the first; each must be a part of the one before. */
function joinTerms(terms: readonly Term[]): { readonly amount: number } | QuantityFault {
  let amount = 0;
  for (let k = terms.length - 1; k > 0; k--) {
    const [term, greater] = [terms[k] as Term, terms[k - 1] as Term];
    if (term.unit === null) return fault("quantity.unit-expected", term.unitAt);
    const part = partOf(term.unit);
    if (part === undefined || part.unit !== greater.unit) return fault("quantity.unit-out-of-order", term.unitAt, { unit: term.unit });
    if (!greater.whole) return fault("quantity.fraction-before-part", greater.at);
    if (term.amount + amount >= part.count) return fault("quantity.part-too-large", term.at, { below: part.count, unit: term.unit });
    amount = (term.amount + amount) / part.count;
  }
  return { amount: (terms[0] as Term).amount + amount };
}
