import { fromSi, toSi, type Unit } from "@halfturn/engine/units";
import type { Units } from "../units.js";

/** Lengths, distances and road speeds, whose unit the reader chooses. They go in as the case file has them. */
export interface MeasuredNumbers {
  readonly units: Units;
  /** As many decimals as the length has, up to what a tape or a caliper shows. */
  readonly length: (millimetres: number) => string;
  /** With the zeros at the end, for numbers that stand under one another: millimetres to a tenth, inches as finely as what measures such a length. */
  readonly evenLength: (millimetres: number) => string;
  readonly evenLengthInterval: (low: number, high: number) => string;
  /** A size that is bought: where it is stocked in millimetres these stand beside the inches. */
  readonly partSize: (millimetres: number) => string;
  /** How far is driven: "164 m". */
  readonly distance: (metres: number) => string;
  /** "105 km/h", one decimal where it has one; or with fixed decimals. */
  readonly roadSpeed: (kmh: number, decimals?: number) => string;
  /** The same without its unit, for the first of two. */
  readonly bareRoadSpeed: (kmh: number, decimals?: number) => string;
  /** Two speeds with the same decimals, the first without its unit: for "56.0" and "71.5 mph" in one sentence. */
  readonly roadSpeeds: (fromKmh: number, toKmh: number) => readonly [from: string, to: string];
  readonly lengthUnit: "mm" | "in";
  readonly speedUnit: "km/h" | "mph";
}

/** How the numbers themselves are written. */
interface Written {
  /** With so many decimals at least and at most. */
  readonly between: (value: number, least: number, most: number) => string;
  readonly to: string;
}

/** Digits beyond these are the rounding of the way through SI. */
const SIGNIFICANT_DIGITS = 12;

const converted = (value: number, from: Unit, to: Unit): number =>
  Number(fromSi(toSi(value, from) as never, to).toPrecision(SIGNIFICANT_DIGITS)) + 0;

/** None for a speed that was meant whole. */
const speedDecimals = (speed: number): number => (Number.isInteger(Number(speed.toFixed(1))) ? 0 : 1);

/** One decimal unless it was meant whole, or what is asked for; rounded once. */
const speedText = ({ between }: Written, speed: number, decimals = speedDecimals(speed)): string => between(speed, decimals, decimals);

const speedTexts = (written: Written, from: number, to: number, unit: string): readonly [from: string, to: string] => {
  const decimals = Math.max(speedDecimals(from), speedDecimals(to));
  return [speedText(written, from, decimals), `${speedText(written, to, decimals)}\u00a0${unit}`];
};

const metric = (written: Written): MeasuredNumbers => {
  const { between, to } = written;
  const bareRoadSpeed = (kmh: number, decimals?: number): string => speedText(written, kmh, decimals);
  const length = (millimetres: number): string => `${between(millimetres, 0, 1)}\u00a0mm`;
  return {
    units: "metric",
    length,
    evenLength: (millimetres) => `${between(millimetres, 1, 1)}\u00a0mm`,
    evenLengthInterval: (low, high) => `${between(low, 1, 1)} ${to} ${between(high, 1, 1)}\u00a0mm`,
    partSize: length,
    distance: (metres) => `${between(metres, 0, 0)}\u00a0m`,
    roadSpeed: (kmh, decimals) => `${bareRoadSpeed(kmh, decimals)}\u00a0km/h`,
    bareRoadSpeed,
    roadSpeeds: (from, to) => speedTexts(written, from, to, "km/h"),
    lengthUnit: "mm",
    speedUnit: "km/h",
  };
};

/** A caliper shows thousandths of an inch, a tape sixteenths: for what only a tape measures, hundredths lose nothing (common practice, no source). */
const [CALIPER_DECIMALS, TAPE_DECIMALS, TAPE_FROM_INCHES] = [3, 2, 10];
/** Parts made in inches come in sixteenths and in twentieths (common practice, no source). */
const STOCK_PARTS_OF_AN_INCH = [16, 20];
/** All digits of a sixteenth, and of millimetres as a sheet states them: a size or a bound that is typed after what is shown must not miss it. */
const [STOCK_INCH_DECIMALS, STOCK_MM_DECIMALS] = [4, 3];
const NEARLY_WHOLE = 1e-6;

const us = (written: Written): MeasuredNumbers => {
  const { between, to } = written;
  const inches = (millimetres: number): number => converted(millimetres, "mm", "in");
  const decimalsOf = (value: number): number => (Math.abs(value) < TAPE_FROM_INCHES ? CALIPER_DECIMALS : TAPE_DECIMALS);
  const length = (millimetres: number): string => {
    const value = inches(millimetres);
    return `${between(value, 0, decimalsOf(value))}\u00a0in`;
  };
  const even = (millimetres: number, like: number): string => {
    const decimals = decimalsOf(inches(like));
    return between(inches(millimetres), decimals, decimals);
  };
  const isInchSize = (millimetres: number): boolean =>
    STOCK_PARTS_OF_AN_INCH.some((parts) => {
      const count = inches(millimetres) * parts;
      return Math.abs(count - Math.round(count)) < NEARLY_WHOLE;
    });
  const mph = (kmh: number): number => converted(kmh, "km/h", "mph");
  const bareRoadSpeed = (kmh: number, decimals?: number): string => speedText(written, mph(kmh), decimals);
  return {
    units: "us",
    length,
    evenLength: (millimetres) => `${even(millimetres, millimetres)}\u00a0in`,
    // Both ends of an interval get the digits of its larger end.
    evenLengthInterval: (low, high) => {
      const largest = Math.max(Math.abs(low), Math.abs(high));
      return `${even(low, largest)} ${to} ${even(high, largest)}\u00a0in`;
    },
    partSize: (millimetres) =>
      isInchSize(millimetres)
        ? `${between(inches(millimetres), 0, STOCK_INCH_DECIMALS)}\u00a0in`
        : `${length(millimetres)} (${between(millimetres, 0, STOCK_MM_DECIMALS)}\u00a0mm)`,
    distance: (metres) => `${between(converted(metres, "m", "ft"), 0, 0)}\u00a0ft`,
    roadSpeed: (kmh, decimals) => `${bareRoadSpeed(kmh, decimals)}\u00a0mph`,
    bareRoadSpeed,
    roadSpeeds: (from, to) => speedTexts(written, mph(from), mph(to), "mph"),
    lengthUnit: "in",
    speedUnit: "mph",
  };
};

/** Built from how a language writes numbers. */
export const measuredNumbers = (units: Units, written: Written): MeasuredNumbers => (units === "us" ? us(written) : metric(written));
