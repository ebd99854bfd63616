import type { Language } from "../language.js";
import type { Units } from "../units.js";
import { type MeasuredNumbers, measuredNumbers } from "./measured-numbers.js";

/** Numbers as people read them: sensible digits, the decimal sign of the language, the unit always beside them. */
export interface Numbers extends MeasuredNumbers {
  /** Fixed decimals, no unit. */
  readonly plain: (value: number, decimals: number) => string;
  /** "9.2 to 10.3": both ends with the same decimals, no unit. */
  readonly plainInterval: (low: number, high: number, decimals: number) => string;
  /** What a display showed: one decimal, more only where the reading has them. */
  readonly gaugedAngle: (degrees: number) => string;
  /** A result in degrees: two decimals. */
  readonly angle: (degrees: number) => string;
  /** A standard uncertainty: two significant digits, no unit. */
  readonly uncertainty: (u: number) => string;
  /** "2.31° ± 0.17°": a result and the half width of its 95 % interval. */
  readonly angleWithin: (degrees: number, halfWidth: number) => string;
  /** "1.90° to 2.72°". */
  readonly angleInterval: (low: number, high: number) => string;
  /** Angular acceleration in rad/s²: whole numbers, one decimal below 10. */
  readonly acceleration: (radiansPerSecondSquared: number) => string;
  readonly accelerationInterval: (low: number, high: number) => string;
  /** The same without its unit, for a table whose heading has it. */
  readonly bareAcceleration: (radiansPerSecondSquared: number) => string;
  readonly bareAccelerationInterval: (low: number, high: number) => string;
  readonly speed: (rpm: number) => string;
  /** A share from 0 to 1 as whole per cent. */
  readonly share: (share: number) => string;
  /** "a, b and c". */
  readonly all: (items: readonly string[]) => string;
  /** "a, b or c". */
  readonly any: (items: readonly string[]) => string;
}

const WORDS: Readonly<Record<Language, { readonly to: string; readonly percent: string }>> = {
  en: { to: "to", percent: "%" },
  es: { to: "a", percent: "\u00a0%" },
};

/** A rounded zero has no sign. */
const unsignedZero = (text: string): string => (/^-0([.,]0+)?$/.test(text) ? text.slice(1) : text);

/** Builds the formatters of a language and a system of units. Formatters are made on first use: a command that prints JSON needs none. */
export function numbersOf(language: Language, units: Units = "metric"): Numbers {
  const made = new Map<string, Intl.NumberFormat>();
  const format = (options: Intl.NumberFormatOptions): Intl.NumberFormat => {
    const key = JSON.stringify(options);
    const known = made.get(key);
    if (known) return known;
    const fresh = new Intl.NumberFormat(language, { useGrouping: "min2", ...options });
    made.set(key, fresh);
    return fresh;
  };
  const between = (value: number, least: number, most: number): string =>
    unsignedZero(format({ minimumFractionDigits: least, maximumFractionDigits: most }).format(value));
  const plain = (value: number, decimals: number): string => between(value, decimals, decimals);
  const { to, percent } = WORDS[language];
  const angle = (degrees: number): string => `${plain(degrees, 2)}°`;
  const decimals = (value: number): number => (Math.abs(value) < 9.95 ? 1 : 0);
  const bareAcceleration = (value: number): string => plain(value, decimals(value));
  // Both ends of an interval get the digits of its larger end.
  const bareAccelerationInterval = (low: number, high: number): string =>
    `${plain(low, decimals(high))} ${to} ${plain(high, decimals(high))}`;
  return {
    ...measuredNumbers(units, { between, to }),
    plain,
    plainInterval: (low, high, digits) => `${plain(low, digits)} ${to} ${plain(high, digits)}`,
    gaugedAngle: (degrees) => `${between(degrees, 1, 2)}°`,
    angle,
    uncertainty: (u) => format({ minimumSignificantDigits: 2, maximumSignificantDigits: 2 }).format(u),
    angleWithin: (degrees, halfWidth) => `${angle(degrees)} ± ${angle(halfWidth)}`,
    angleInterval: (low, high) => `${angle(low)} ${to} ${angle(high)}`,
    acceleration: (value) => `${bareAcceleration(value)}\u00a0rad/s²`,
    accelerationInterval: (low, high) => `${bareAccelerationInterval(low, high)}\u00a0rad/s²`,
    bareAcceleration,
    bareAccelerationInterval,
    speed: (rpm) => `${plain(rpm, 0)}\u00a0rpm`,
    share: (share) => `${plain(share * 100, 0)}${percent}`,
    all: (items) => new Intl.ListFormat(language, { type: "conjunction" }).format(items),
    any: (items) => new Intl.ListFormat(language, { type: "disjunction" }).format(items),
  };
}
