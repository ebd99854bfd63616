import {
  type Driveline,
  orderAmplitude,
  peakAccelerationCoefficient,
  transmissionErrorPeakToPeak,
  unevennessOfAngle,
} from "../kinematics/index.js";
import { type Radians, type Rpm, rpmToRadiansPerSecond } from "../units/index.js";
import { type AngleEstimate, type ChainEstimates, estimateOf } from "./chain-estimates.js";
import type { MotionCoefficients, MotionResult, SpeedResult } from "./driveline-analysis.js";
import type { Estimate } from "./estimate.js";

const SPEED_STEP = 500;

const uneven = (angle: number): number => unevennessOfAngle(angle as Radians);
const coefficient = (angle: AngleEstimate | null): Estimate | null =>
  estimateOf(angle, (value) => peakAccelerationCoefficient(uneven(value)));

const scaled = (estimate: Estimate | null, factor: number): Estimate | null =>
  estimate && { value: estimate.value * factor, u: estimate.u * factor, low: estimate.low * factor, high: estimate.high * factor };

/** Shaft speeds at which the motion is stated: every 500 rpm, and the highest speed in use. */
export function statedSpeeds(highest: Rpm): readonly Rpm[] {
  const speeds: Rpm[] = [];
  for (let speed = SPEED_STEP; speed < highest; speed += SPEED_STEP) speeds.push(speed as Rpm);
  return [...speeds, highest];
}

/** What the estimates of a chain mean for its motion, up to the highest shaft speed. The verdict is left to `judge`. */
export function motionResult(driveline: Driveline, chain: ChainEstimates, highest: Rpm): Omit<MotionResult, "verdict"> {
  const whole = coefficient(chain.whole);
  const coefficients: MotionCoefficients = {
    driven: whole,
    // A chain run backwards has the same singular values, hence the same coefficient.
    sourceCoast: whole,
    drive: chain.drive.map(coefficient),
    coast: chain.coast.map(coefficient),
  };
  const sections = (estimates: readonly (Estimate | null)[], squared: number) =>
    driveline.sections.map(({ id }, s) => ({ section: id, acceleration: scaled(estimates[s] ?? null, squared) }));
  return {
    transmissionErrorPeakToPeak: estimateOf(chain.whole, (angle) => transmissionErrorPeakToPeak(uneven(angle))),
    secondOrder: estimateOf(chain.whole, (angle) => orderAmplitude(uneven(angle), 1)),
    fourthOrder: estimateOf(chain.whole, (angle) => orderAmplitude(uneven(angle), 2)),
    coefficients,
    speeds: statedSpeeds(highest).map((shaftSpeed): SpeedResult => {
      const squared = rpmToRadiansPerSecond(shaftSpeed) ** 2;
      return {
        shaftSpeed,
        drivenAcceleration: scaled(coefficients.driven, squared),
        sourceAccelerationCoast: scaled(coefficients.sourceCoast, squared),
        drive: sections(coefficients.drive, squared),
        coast: sections(coefficients.coast, squared),
      };
    }),
  };
}
