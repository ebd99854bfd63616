import type { ShaftAngle } from "../signal/index.js";
import { type Deviates, normalDeviates } from "../uncertainty/index.js";

/** Pulses from a mark on a shaft. */
export interface Tachometer {
  readonly perTurn: number;
  /** Standard deviation of each pulse's time, seconds. */
  readonly jitter: number;
}

/**
 * Times of a shaft's pulses in seconds, rising. drive: an angle in proportion to the shaft's; ratio: rad of the shaft per rad of it.
 * Jitter stays within a third of the gap, so that no pulse overtakes another.
 */
export function pulseTimes(drive: ShaftAngle, ratio: number, { perTurn, jitter }: Tachometer, uniform: Deviates): Float64Array {
  const normal = normalDeviates(uniform);
  const step = (2 * Math.PI) / perTurn / ratio;
  const count = Math.floor(drive.total / step) + 1;
  return Float64Array.from({ length: count }, (_, i) => {
    const time = drive.timeOf(i * step);
    const most = step / drive.speedAt(time) / 3;
    return time + Math.min(most, Math.max(-most, jitter * normal()));
  });
}
