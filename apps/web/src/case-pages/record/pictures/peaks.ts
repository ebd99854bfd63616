import type { HeardPart } from "../../../worker/listening/listening-types.js";

export interface Peak {
  /** Hz. */
  readonly frequency: number;
  /** Half peak to peak. */
  readonly amplitude: number;
}

/** Below it lie a sensor's drift and the road's own slow heave. */
const LOWEST = 2;
/** Peaks closer than this are one, spread by a speed that was not quite steady. */
const APART = 1.5;

/** The largest peaks of a spectrum, largest first. */
export function largestPeaks(amplitudes: Float32Array, lineSpacing: number, count: number): readonly Peak[] {
  const tops: Peak[] = [];
  for (let k = 1; k + 1 < amplitudes.length; k++) {
    const amplitude = amplitudes[k] as number;
    const isTop = amplitude > (amplitudes[k - 1] as number) && amplitude >= (amplitudes[k + 1] as number);
    if (isTop && k * lineSpacing >= LOWEST) tops.push({ frequency: k * lineSpacing, amplitude });
  }
  const kept: Peak[] = [];
  for (const top of tops.toSorted((a, b) => b.amplitude - a.amplitude)) {
    if (kept.length === count) break;
    if (kept.every(({ frequency }) => Math.abs(frequency - top.frequency) >= APART)) kept.push(top);
  }
  return kept;
}

export interface TurningOrder {
  readonly part: string;
  readonly order: number;
  /** Hz at the mean speed. */
  readonly frequency: number;
}

/** The orders that pass through a frequency while the wheel turns from the least to the greatest rate (turns per second), nearest at the mean rate first. */
export function turningAtFrequency(
  frequency: number,
  parts: readonly HeardPart[],
  [least, mean, greatest]: readonly [number, number, number],
  within: number,
): readonly TurningOrder[] {
  return parts
    .flatMap(({ part, perWheelTurn, orders }) => orders.map(({ order }) => ({ part, order, perWheel: order * perWheelTurn })))
    .filter(({ perWheel }) => frequency >= perWheel * least - within && frequency <= perWheel * greatest + within)
    .map(({ part, order, perWheel }) => ({ part, order, frequency: perWheel * mean }))
    .toSorted((a, b) => Math.abs(a.frequency - frequency) - Math.abs(b.frequency - frequency));
}

/** The largest value of each of `columns` columns, so that no peak is lost in the drawing. */
export function decimatedByMax(values: Float32Array, columns: number): Float32Array {
  const count = Math.max(1, Math.min(columns, values.length));
  const out = new Float32Array(count);
  for (let column = 0; column < count; column++) {
    const end = Math.floor(((column + 1) * values.length) / count);
    for (let k = Math.floor((column * values.length) / count); k < end; k++)
      out[column] = Math.max(out[column] as number, values[k] as number);
  }
  return out;
}
