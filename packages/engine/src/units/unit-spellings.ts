import { type QuantityKind, UNITS, type Unit } from "./unit-table.js";

/** How people type each unit; upper and lower case are alike. The quotes mean minutes and seconds of an angle, feet and inches of a length. */
const SPELLINGS: Readonly<Record<Unit, readonly string[]>> = {
  rad: ["rad"],
  deg: ["°", "º", "˚", "deg", "degs", "degree", "degrees"],
  arcmin: ["'", "′", "’", "min", "arcmin"],
  arcsec: ['"', "″", "”", "''", "′′", "sec", "arcsec"],
  m: ["m"],
  cm: ["cm"],
  mm: ["mm"],
  ft: ["ft", "ft.", "foot", "feet", "'", "′", "’"],
  in: ["in", "in.", "inch", "inches", '"', "″", "”", "''", "′′"],
  "N.m": ["n.m", "n·m", "n⋅m", "n m", "n*m", "nm"],
  "lbf.ft": [
    "lbf.ft",
    "lbf·ft",
    "lbf⋅ft",
    "lbf ft",
    "lbf-ft",
    "lb.ft",
    "lb·ft",
    "lb ft",
    "lb-ft",
    "ft.lbf",
    "ft·lbf",
    "ft lbf",
    "ft-lbf",
    "ft.lb",
    "ft·lb",
    "ft lb",
    "ft-lb",
  ],
  "m/s": ["m/s"],
  "km/h": ["km/h", "kmh", "kph"],
  mph: ["mph", "mi/h"],
  "rad/s": ["rad/s"],
  rpm: ["rpm", "r/min"],
};

interface Spelling {
  readonly text: string;
  readonly unit: Unit;
  readonly kind: QuantityKind;
}

/** Longest first, so that "mm" is not read as "m". */
const LONGEST_FIRST: readonly Spelling[] = (Object.keys(SPELLINGS) as Unit[])
  .flatMap((unit) => SPELLINGS[unit].map((text) => ({ text, unit, kind: UNITS[unit].kind })))
  .sort((a, b) => b.text.length - a.text.length);

const LETTER = /\p{L}/u;

/** The longest unit that stands at a place of a text; of two alike (feet, minutes) the one of the kind. `end` is the place after it. */
export function unitAt(
  text: string,
  at: number,
  kind: QuantityKind,
): { readonly unit: Unit; readonly kind: QuantityKind; readonly end: number } | null {
  const fits = ({ text: spelling }: Spelling): boolean => {
    const end = at + spelling.length;
    const whole = !LETTER.test(spelling.at(-1) as string) || !LETTER.test(text.charAt(end));
    return whole && text.slice(at, end).toLowerCase() === spelling;
  };
  const longest = LONGEST_FIRST.find(fits);
  const found =
    LONGEST_FIRST.find((spelling) => spelling.kind === kind && spelling.text.length === longest?.text.length && fits(spelling)) ?? longest;
  return found ? { unit: found.unit, kind: found.kind, end: at + found.text.length } : null;
}
