import { DEFAULT_COVERAGE, type Interval } from "../uncertainty/index.js";
import type { RollingCircumference } from "./rolling-circumference.js";
import type { RotatingPart } from "./rotating-parts.js";

/**
 * Central 95 % interval of a part's rate, turns per second. Its relative error is that of the circumference plus, above the transmission, that of the slip:
 * two independent rectangular errors of half widths a >= b, whose sum is trapezoidal (JCGM 101:2008, 6.4.4), so the half width of the interval is exact:
 * p a while that lies on the flat top, else a + b - sqrt(4 a b (1 - p)). First order in the circumference, whose half width is a few hundredths.
 */
export function rateInterval({ rate }: RotatingPart, circumference: RollingCircumference): Interval {
  const ofCircumference = circumference.u / circumference.value;
  const ofSlip = Math.sqrt(Math.max(0, (rate.u / rate.value) ** 2 - ofCircumference ** 2));
  const [a, b] = [Math.max(ofCircumference, ofSlip) * Math.sqrt(3), Math.min(ofCircumference, ofSlip) * Math.sqrt(3)];
  const flat = DEFAULT_COVERAGE * a;
  const half = flat <= a - b ? flat : a + b - Math.sqrt(4 * a * b * (1 - DEFAULT_COVERAGE));
  return { low: rate.value * (1 - half), high: rate.value * (1 + half) };
}
