import { type AttributionInput, type ReferenceShaft, ridgeReference } from "@halfturn/engine/attribution";
import type { Finding } from "@halfturn/engine/findings";
import { type RidgeSettings, type RidgeSpeed, speedFromVibrationSteps } from "@halfturn/engine/signal";
import type { PausedWork } from "@halfturn/engine/uncertainty";
import type { RecordedSpeed } from "./recorded-speed.js";

/** Road speeds, m/s, between which the drive was. */
export interface SpeedRange {
  readonly slowest: number;
  readonly fastest: number;
}

/** Greatest change of road speed while a ridge is followed, m/s^2 (common practice, no source). */
const ACCELERATION = 1.5;

/** One speed from before the first sample to after the last: what the parts are worked out at until the vibration tells more. */
export function middleSpeed({ slowest, fastest }: SpeedRange, samples: AttributionInput["channels"][number]["samples"]): RecordedSpeed {
  const { start, length, rate } = samples;
  const middle = (slowest + fastest) / 2;
  return { kind: "road-speed", times: Float64Array.of(start - 1, start + length / rate + 1), speeds: Float64Array.of(middle, middle) };
}

/** A shaft whose speed was followed in the vibration itself. */
export interface Followed {
  readonly reference: ReferenceShaft;
  readonly finding: Finding;
}

interface Ridge {
  readonly part: string;
  readonly order: number;
  readonly perWheelTurn: number;
  readonly ridge: RidgeSpeed;
}

/** Follows the clearest ridge that an order of any part can draw within a range of road speed; null where none stands out. circumference: metres per turn of the wheel. */
export async function followedSpeed(
  { channels, parts }: AttributionInput,
  circumference: number,
  range: SpeedRange,
  work: PausedWork,
): Promise<Followed | null> {
  const [channel] = channels;
  if (channel === undefined) return null;
  let clearest: Ridge | null = null;
  for (const { part, perWheelTurn, orders } of parts) {
    for (const { order } of orders) {
      const turnsPerMetre = perWheelTurn / circumference;
      const asked = { ...inShaft(range, turnsPerMetre), orders: [order], acceleration: 2 * Math.PI * turnsPerMetre * ACCELERATION };
      const ridge = await ridgeOf(channel.samples, asked, work);
      if (ridge !== null && ridge.clearness > (clearest?.ridge.clearness ?? 0)) clearest = { part, order, perWheelTurn, ridge };
    }
  }
  if (clearest === null) return null;
  const { part, order, perWheelTurn, ridge } = clearest;
  return {
    reference: ridgeReference(ridge, perWheelTurn, inShaft(range, perWheelTurn / circumference)),
    finding: {
      code: "recording.speed-followed",
      severity: "warn",
      path: "",
      params: { part, order, fromKmh: range.slowest * 3.6, toKmh: range.fastest * 3.6 },
    },
  };
}

/** Road speeds as those of a shaft, rad/s. */
const inShaft = ({ slowest, fastest }: SpeedRange, turnsPerMetre: number): SpeedRange => ({
  slowest: 2 * Math.PI * turnsPerMetre * slowest,
  fastest: 2 * Math.PI * turnsPerMetre * fastest,
});

async function ridgeOf(
  samples: AttributionInput["channels"][number]["samples"],
  asked: RidgeSettings,
  { signal, pause }: PausedWork,
): Promise<RidgeSpeed | null> {
  // What would lie above half the rate folds back, and draws no ridge of its own.
  if (Math.max(...asked.orders) * asked.fastest > Math.PI * samples.rate) return null;
  const steps = speedFromVibrationSteps(samples, asked);
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value.ok ? step.value.value : null;
    await pause?.();
    signal?.throwIfAborted();
  }
}
