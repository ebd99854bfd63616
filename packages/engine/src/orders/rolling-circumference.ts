import type { MetresPerSecond } from "../units/index.js";
import type { TyreSize } from "./tyre-size.js";

/** Distance per turn of the wheel, metres, with its standard uncertainty. */
export interface RollingCircumference {
  readonly value: number;
  readonly u: number;
}

/** Rolling circumference over overall diameter, at the rated load and pressure and 60 km/h (ETRTO recommendation, read in a secondary source). */
const PER_DIAMETER = { radial: 3.05, bias: 2.99 } as const;
/** Wear, load and pressure: half width of the error of a circumference from the size alone, and of one that was given. Common practice, no source. */
const FROM_SIZE = 0.025;
const AS_GIVEN = 0.01;
const REFERENCE_SPEED = 60 / 3.6;
/** The belt grows by a ten-thousandth per km/h above 60 (German WdK, read in a secondary source). */
const GROWTH = 3.6e-4;

const uncertain = (value: number, halfWidth: number): RollingCircumference => ({ value, u: (value * halfWidth) / Math.sqrt(3) });

/** From the size on the sidewall, at a road speed. */
export function circumferenceOfSize({ construction, overallDiameter }: TyreSize, speed: MetresPerSecond): RollingCircumference {
  const standing = PER_DIAMETER[construction] * overallDiameter;
  return uncertain(standing * (1 + GROWTH * (speed - REFERENCE_SPEED)), FROM_SIZE);
}

/** One that was measured or taken from a data sheet, metres. */
export const circumferenceAsGiven = (value: number): RollingCircumference => uncertain(value, AS_GIVEN);
