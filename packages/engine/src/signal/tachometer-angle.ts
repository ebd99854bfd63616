import { angleThrough } from "./angle-through.js";
import { cleanPulses, type PulseNote } from "./clean-pulses.js";
import type { ShaftAngle } from "./shaft-angle.js";
import { type SignalResult, signalFault, signalValue } from "./signal-fault.js";

/** A shaft's angle from its pulses, and what had to be put right. */
export interface TachometerAngle {
  readonly angle: ShaftAngle;
  readonly notes: readonly PulseNote[];
}

/**
 * Angle of a shaft from the times of its tachometer pulses, 0 at the first. pulses: seconds, rising, three or more; perTurn: pulses per turn, > 0.
 * The speed at a pulse is that of the quadratic through it and its neighbours, so a steady acceleration is followed exactly; between pulses a cubic joins
 * the two quadratics without a step in angle or speed. Missing pulses are counted in, doubled ones dropped, and both are noted.
 * Faults: shaft-angle.too-few-pulses, shaft-angle.times-not-rising, signal.not-finite.
 * Source: K. R. Fyfe and E. D. S. Munck, "Analysis of computed order tracking", Mech. Syst. Signal Process. 11(2), 1997 (quadratic through three pulses).
 */
export function shaftAngleFromPulses(pulses: Float64Array, perTurn: number): SignalResult<TachometerAngle> {
  if (!(perTurn > 0 && Number.isFinite(perTurn))) throw new RangeError(`pulses per turn must be above zero, got ${perTurn}`);
  for (const [i, time] of pulses.entries()) {
    if (!Number.isFinite(time)) return signalFault("signal.not-finite", `pulses[${i}]`);
    if (i > 0 && time <= (pulses[i - 1] as number)) return signalFault("shaft-angle.times-not-rising", `pulses[${i}]`, { time });
  }
  if (pulses.length < 3) return signalFault("shaft-angle.too-few-pulses", "pulses", { pulses: pulses.length });
  const { times, steps, notes } = cleanPulses(pulses);
  if (times.length < 3) return signalFault("shaft-angle.too-few-pulses", "pulses", { pulses: times.length });
  const angles = steps.map((step) => (2 * Math.PI * step) / perTurn);
  return signalValue({ angle: angleThrough(times, angles), notes });
}

/**
 * Times at which a tachometer column rises through `threshold`, found on the straight line between samples. times: seconds; values: any unit, as many.
 * A value that is not a number hides the edges beside it.
 */
export function risingEdges(times: Float64Array, values: Float64Array, threshold = 0.5): Float64Array {
  const edges: number[] = [];
  for (let i = 1; i < values.length; i++) {
    const [low, high] = [values[i - 1] as number, values[i] as number];
    if (!(low < threshold && high >= threshold)) continue;
    const [before, after] = [times[i - 1] as number, times[i] as number];
    edges.push(before + ((after - before) * (threshold - low)) / (high - low));
  }
  return Float64Array.from(edges);
}
