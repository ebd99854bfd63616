import type { Unit } from "@halfturn/engine/units";
import type { Units } from "../device/settings.js";

/** What a field may ask for. Values go in and out in the unit of the case file: mm, degrees, km/h, rpm, rad/s^2, degrees per mm, a share of 1, or a bare number. */
export type Measure =
  | "length"
  | "angle"
  | "road-speed"
  | "shaft-speed"
  | "angular-acceleration"
  | "pitch-rate"
  | "share"
  | "number"
  | "count";

export interface ShownAs {
  /** null: a bare number. */
  readonly unit: Unit | null;
  /** What stands beside the number. */
  readonly chip: string;
  /** At most; zeros at the end are dropped. */
  readonly decimals: number;
  /** How many of the number shown make one of the file, where no unit of the engine says it; 1 when left out. */
  readonly perFileUnit?: number;
}

/** The unit in which the case file has it. */
export const FILE_UNITS = {
  length: "mm",
  angle: "deg",
  "road-speed": "km/h",
  "shaft-speed": "rpm",
  "angular-acceleration": null,
  "pitch-rate": null,
  share: null,
  number: null,
  count: null,
} as const satisfies Readonly<Record<Measure, Unit | null>>;

const METRIC: Readonly<Record<Measure, ShownAs>> = {
  length: { unit: "mm", chip: "mm", decimals: 2 },
  angle: { unit: "deg", chip: "°", decimals: 3 },
  "road-speed": { unit: "km/h", chip: "km/h", decimals: 1 },
  "shaft-speed": { unit: "rpm", chip: "rpm", decimals: 1 },
  "angular-acceleration": { unit: null, chip: "rad/s²", decimals: 0 },
  "pitch-rate": { unit: null, chip: "°/mm", decimals: 4 },
  share: { unit: null, chip: "%", decimals: 2, perFileUnit: 100 },
  number: { unit: null, chip: "", decimals: 6 },
  count: { unit: null, chip: "", decimals: 0 },
};

const MM_PER_INCH = 25.4;

const US: Readonly<Record<Measure, ShownAs>> = {
  ...METRIC,
  length: { unit: "in", chip: "in", decimals: 3 },
  "road-speed": { unit: "mph", chip: "mph", decimals: 1 },
  "pitch-rate": { unit: null, chip: "°/in", decimals: 3, perFileUnit: MM_PER_INCH },
};

/** How a measure is shown and typed by default; any unit of its kind may be typed beside the number. */
export const shownAs = (measure: Measure, units: Units): ShownAs => (units === "us" ? US : METRIC)[measure];
