/** What stands between the vibration and the file. */
export interface Sensor {
  /** Samples per second. */
  readonly rate: number;
  /** -3 dB of the filter before sampling (fourth-order Butterworth), Hz; null = none: what lies above half the rate folds back. */
  readonly filter: number | null;
  /** RMS of its own noise over 0 to half the rate, m/s^2. */
  readonly noise: number;
  /** Offset at the start and growth per second, m/s^2. */
  readonly offset: number;
  readonly drift: number;
  /** It cannot show more than this, m/s^2; null = without limit. */
  readonly fullScale: number | null;
  /** Step of its numbers, m/s^2; 0 = none. */
  readonly resolution: number;
}

const FILTER_ORDER = 4;

/** Gain of the sensor's filter at a frequency in Hz. Source: S. Butterworth, Wireless Engineer 7, 1930. */
export const filterGain = ({ filter }: Sensor, at: number): number =>
  filter === null ? 1 : 1 / Math.sqrt(1 + (at / filter) ** (2 * FILTER_ORDER));

/** A true acceleration as the sensor writes it down, `time` seconds after its start. */
export function sensed({ offset, drift, fullScale, resolution }: Sensor, value: number, time: number): number {
  const shifted = value + offset + drift * time;
  const held = fullScale === null ? shifted : Math.min(fullScale, Math.max(-fullScale, shifted));
  return resolution > 0 ? Math.round(held / resolution) * resolution : held;
}
