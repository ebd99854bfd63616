import { type ShaftAngle, type SignalResult, shaftAngleFromSpeeds } from "../signal/index.js";
import { type Deviates, normalDeviates } from "../uncertainty/index.js";

/** A drive: road speeds at times, joined by a monotone cubic. */
export interface SpeedProfile {
  /** Seconds, rising. */
  readonly times: readonly number[];
  /** Metres per second, > 0. */
  readonly speeds: readonly number[];
}

/** How a receiver or the vehicle's bus writes speed down. */
export interface SpeedLog {
  /** Seconds between readings. */
  readonly interval: number;
  /** Seconds by which a reading comes late. */
  readonly lag: number;
  /** Step of the reading, m/s; 0 = none. */
  readonly resolution: number;
  /** Share by which it reads too much; < 0 = too little. */
  readonly scale: number;
  /** Standard deviation of its noise, m/s. */
  readonly noise: number;
}

/** Distance in metres as the angle of a shaft that turns one radian per metre. Faults as shaftAngleFromSpeeds. */
export const driveOf = ({ times, speeds }: SpeedProfile): SignalResult<ShaftAngle> =>
  shaftAngleFromSpeeds(Float64Array.from(times), Float64Array.from(speeds));

/** What the log holds of a drive: times in seconds, speeds in m/s, never below one step (a tenth of a metre per second where there is none). */
export function loggedSpeeds(
  drive: ShaftAngle,
  log: SpeedLog,
  uniform: Deviates,
): { readonly times: Float64Array; readonly speeds: Float64Array } {
  const normal = normalDeviates(uniform);
  const count = Math.floor((drive.end - drive.start) / log.interval) + 1;
  const times = Float64Array.from({ length: count }, (_, i) => drive.start + i * log.interval);
  const least = log.resolution > 0 ? log.resolution : 0.1;
  const speeds = times.map((time) => {
    const then = Math.max(drive.start, time - log.lag);
    const read = drive.speedAt(then) * (1 + log.scale) + log.noise * normal();
    return Math.max(least, log.resolution > 0 ? Math.round(read / log.resolution) * log.resolution : read);
  });
  return { times, speeds };
}
