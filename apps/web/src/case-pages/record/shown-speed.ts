import type { Numbers } from "@halfturn/words";
import type { Units } from "../../device/settings.js";

/** Source: international yard and pound agreement of 1959: one mile is 1.609344 km. */
const KMH_PER_MPH = 1.609344;

/** Writes a road speed in the units that are set: "85 km/h", "52.8 mph"; whole where it was meant whole. */
export const speedWriter =
  (numbers: Numbers, units: Units): ((kmh: number) => string) =>
  (kmh) => {
    const value = units === "us" ? kmh / KMH_PER_MPH : kmh;
    const rounded = Math.round(value * 10) / 10;
    return `${numbers.plain(rounded, Number.isInteger(rounded) ? 0 : 1)} ${units === "us" ? "mph" : "km/h"}`;
  };

/** The same of a speed that was measured: whole, since nobody drives to a tenth. */
export const wholeSpeedWriter =
  (numbers: Numbers, units: Units): ((kmh: number) => string) =>
  (kmh) =>
    units === "us" ? `${numbers.plain(kmh / KMH_PER_MPH, 0)} mph` : `${numbers.plain(kmh, 0)} km/h`;

/** Speeds that people name, in the units that are set; values in km/h. */
export const usualSpeeds = (units: Units): readonly number[] =>
  units === "us" ? [45, 55, 65, 75].map((mph) => mph * KMH_PER_MPH) : [60, 80, 100, 120];

/** A step on the speedometer, km/h. */
export const speedStep = (units: Units): number => (units === "us" ? 5 * KMH_PER_MPH : 10);
