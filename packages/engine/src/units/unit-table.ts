import type { Metres, MetresPerSecond, NewtonMetres, Radians, RadiansPerSecond } from "./brand.js";

/** What each kind of quantity is inside the engine. */
export interface SiOf {
  readonly angle: Radians;
  readonly length: Metres;
  readonly torque: NewtonMetres;
  readonly speed: MetresPerSecond;
  readonly rotation: RadiansPerSecond;
}

export type QuantityKind = keyof SiOf;

interface UnitRow {
  readonly kind: QuantityKind;
  /** SI value of one unit: numerator / denominator, kept apart so that decimal units divide exactly. */
  readonly numerator: number;
  readonly denominator: number;
  /** As printed after a number, with the blank that belongs before it. */
  readonly suffix: string;
  /** The greater unit that this one may follow ("3° 25'"), and how many of this one make one of that. */
  readonly partOf?: { readonly unit: string; readonly count: number };
  readonly source: string;
}

const SI_BROCHURE = "BIPM, SI Brochure, 9th edition (2019), table 8";
const YARD_AND_POUND = "international yard and pound agreement of 1959; NIST SP 811 (2008), appendix B.6";

/** Every unit that people may type or read, with its exact factor to the SI unit of its kind. */
export const UNITS = {
  rad: { kind: "angle", numerator: 1, denominator: 1, suffix: " rad", source: SI_BROCHURE },
  deg: { kind: "angle", numerator: Math.PI / 180, denominator: 1, suffix: "°", source: SI_BROCHURE },
  arcmin: {
    kind: "angle",
    numerator: Math.PI / 180,
    denominator: 60,
    suffix: "′",
    partOf: { unit: "deg", count: 60 },
    source: SI_BROCHURE,
  },
  arcsec: {
    kind: "angle",
    numerator: Math.PI / 180,
    denominator: 3600,
    suffix: "″",
    partOf: { unit: "arcmin", count: 60 },
    source: SI_BROCHURE,
  },
  m: { kind: "length", numerator: 1, denominator: 1, suffix: " m", source: SI_BROCHURE },
  cm: { kind: "length", numerator: 1, denominator: 100, suffix: " cm", source: SI_BROCHURE },
  mm: { kind: "length", numerator: 1, denominator: 1000, suffix: " mm", source: SI_BROCHURE },
  ft: { kind: "length", numerator: 3048, denominator: 10_000, suffix: " ft", source: YARD_AND_POUND },
  in: { kind: "length", numerator: 254, denominator: 10_000, suffix: " in", partOf: { unit: "ft", count: 12 }, source: YARD_AND_POUND },
  "N.m": { kind: "torque", numerator: 1, denominator: 1, suffix: " N·m", source: SI_BROCHURE },
  // A pound of 0.45359237 kg under 9.80665 m/s2, at a foot of 0.3048 m.
  "lbf.ft": {
    kind: "torque",
    numerator: 45_359_237 * 980_665 * 3048,
    denominator: 1e17,
    suffix: " lbf·ft",
    source: `${YARD_AND_POUND}; standard acceleration of the 3rd CGPM (1901)`,
  },
  "m/s": { kind: "speed", numerator: 1, denominator: 1, suffix: " m/s", source: SI_BROCHURE },
  "km/h": { kind: "speed", numerator: 10, denominator: 36, suffix: " km/h", source: SI_BROCHURE },
  mph: { kind: "speed", numerator: 44_704, denominator: 100_000, suffix: " mph", source: `${YARD_AND_POUND}; a mile of 5280 ft` },
  "rad/s": { kind: "rotation", numerator: 1, denominator: 1, suffix: " rad/s", source: SI_BROCHURE },
  rpm: {
    kind: "rotation",
    numerator: Math.PI,
    denominator: 30,
    suffix: " rpm",
    source: "NIST SP 811 (2008), appendix B.8: 2 pi rad a minute",
  },
} as const satisfies Readonly<Record<string, UnitRow>>;

export type Unit = keyof typeof UNITS;

/** The units of one kind. */
export type UnitOf<Kind extends QuantityKind> = { [U in Unit]: (typeof UNITS)[U]["kind"] extends Kind ? U : never }[Unit];

/** The kind of quantity that a unit measures. */
type KindOf<U extends Unit> = (typeof UNITS)[U]["kind"];

/** An amount in a unit as the SI value of its kind (radians, metres, newton metres, metres or radians per second). Any finite value; the sign is kept. */
export function toSi<U extends Unit>(amount: number, unit: U): SiOf[KindOf<U>] {
  const { numerator, denominator } = UNITS[unit];
  return ((amount * numerator) / denominator) as SiOf[KindOf<U>];
}

/** An SI value as an amount in a unit; the inverse of `toSi` to the last digit or two. */
export function fromSi<U extends Unit>(value: SiOf[KindOf<U>], unit: U): number {
  const { numerator, denominator } = UNITS[unit];
  return (value * denominator) / numerator;
}

/** The greater unit that a unit may follow in a compound ("3° 25'"), and how many of it make one; undefined where none may. */
export const partOf = (unit: Unit): UnitRow["partOf"] => (UNITS[unit] as UnitRow).partOf;
