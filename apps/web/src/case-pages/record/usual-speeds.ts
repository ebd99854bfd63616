import { fromSi, toSi } from "@halfturn/engine/units";
import type { Units } from "../../device/settings.js";

const kmh = (mph: number): number => fromSi(toSi(mph, "mph"), "km/h");

/** Speeds that people name, in the units that are set; values in km/h. */
export const usualSpeeds = (units: Units): readonly number[] => (units === "us" ? [45, 55, 65, 75].map(kmh) : [60, 80, 100, 120]);

/** A step on the speedometer, km/h. */
export const speedStep = (units: Units): number => (units === "us" ? kmh(5) : 10);
