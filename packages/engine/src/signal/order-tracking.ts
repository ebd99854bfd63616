import { cubicSpline } from "./cubic-spline.js";
import { transformSize } from "./real-fft.js";
import type { TimeSignal } from "./sample-reader.js";
import type { ShaftAngle } from "./shaft-angle.js";
import { type SignalResult, signalFault, signalValue } from "./signal-fault.js";
import { averagedSpectrum, type Spectrum } from "./spectrum.js";
import { type WindowName, windowSamples, windowSums } from "./window.js";

/** The same signal at even steps of a shaft's angle. */
export interface AngleSignal {
  /** In u; the first lies at the angle `start`. */
  readonly samples: Float64Array;
  readonly samplesPerTurn: number;
  /** Angle of the first sample in rad. */
  readonly start: number;
  /** Time of each sample in seconds. */
  readonly times: Float64Array;
}

/** The least power of two of samples per turn at which nothing recorded folds back, even where the shaft turns slowest. rate: samples per second; slowest: rad/s, > 0. */
export const samplesPerTurnFor = (rate: number, slowest: number): number => transformSize((2 * Math.PI * rate) / slowest);

/**
 * Samples a signal anew at even steps of a shaft's angle (computed order tracking), by cubic spline, over the whole turns that both cover.
 * samplesPerTurn: a whole number from 4. Orders up to half of it can be read; what was recorded above half of it times the speed folds back: see samplesPerTurnFor.
 * Faults: signal.no-samples, signal.bad-rate, order-tracking.no-whole-turns.
 * Source: K. R. Fyfe and E. D. S. Munck, Mech. Syst. Signal Process. 11(2), 187-205, 1997.
 */
export function resampleByAngle(signal: TimeSignal, angle: ShaftAngle, samplesPerTurn: number): SignalResult<AngleSignal> {
  if (!(Number.isInteger(samplesPerTurn) && samplesPerTurn >= 4))
    throw new RangeError(`samples per turn are a whole number from 4, got ${samplesPerTurn}`);
  const { samples, rate, start } = signal;
  if (!(rate > 0 && Number.isFinite(rate))) return signalFault("signal.bad-rate", "rate", { rate });
  if (samples.length < 2) return signalFault("signal.no-samples", "samples", { samples: samples.length });
  const from = Math.max(start, angle.start);
  const to = Math.min(start + (samples.length - 1) / rate, angle.end);
  const step = (2 * Math.PI) / samplesPerTurn;
  const first = Math.ceil(angle.angleAt(from) / step - STEP_ROUNDING);
  const covered = Math.floor(angle.angleAt(to) / step + STEP_ROUNDING) - first + 1;
  const turns = to > from ? Math.floor(covered / samplesPerTurn) : 0;
  if (turns < 1) return signalFault("order-tracking.no-whole-turns", "samples", { from, to });
  const times = Float64Array.from({ length: turns * samplesPerTurn }, (_, k) => angle.timeOf((first + k) * step));
  const at = cubicSpline(samples);
  return signalValue({ samples: times.map((time) => at((time - start) * rate)), samplesPerTurn, start: first * step, times });
}

/** A share of a step by which an angle may miss its place through rounding. */
const STEP_ROUNDING = 1e-9;

/** Order spectrum averaged over blocks of whole turns: as averagedSpectrum, but lines and bandwidths are in orders and densities per order. */
export function orderSpectrum(signal: AngleSignal, turns: number, window: WindowName, overlap = 0.5): SignalResult<Spectrum> {
  const blockLength = turns * signal.samplesPerTurn;
  return averagedSpectrum(signal.samples, signal.samplesPerTurn, { window, blockLength, overlap, detrend: "mean" });
}

/** How one order goes along a run, block by block. */
export interface OrderCut {
  readonly order: number;
  /** Mean speed of the shaft in each block, rad/s. */
  readonly speeds: Float64Array;
  /** Amplitude (half peak to peak), u. */
  readonly amplitudes: Float64Array;
  /** Phase in rad, (-pi, pi]: amplitude cos(order angle + phase), with the angle of the shaft's own clock. */
  readonly phases: Float64Array;
}

/**
 * Amplitude and phase of an order (>= 0, whole or not) against speed, over blocks of so many whole turns, half overlapping.
 * Neighbouring orders disturb it by the window's side lobes: it is exact where they lie whole multiples of 1/turns away beyond the window's main lobe.
 * Faults: signal.too-short where not one block fits.
 */
export function orderCut(signal: AngleSignal, order: number, turns: number, window: WindowName = "hann"): SignalResult<OrderCut> {
  const { samples, samplesPerTurn, times } = signal;
  const length = turns * samplesPerTurn;
  if (length > samples.length) return signalFault("signal.too-short", "samples", { samples: samples.length, needed: length });
  const hop = Math.max(1, Math.round(length / 2));
  const count = Math.floor((samples.length - length) / hop) + 1;
  const shape = windowSamples(window, length);
  const { sum } = windowSums(shape);
  const speeds = new Float64Array(count);
  const amplitudes = new Float64Array(count);
  const phases = new Float64Array(count);
  for (let block = 0; block < count; block++) {
    let re = 0;
    let im = 0;
    for (let n = 0; n < length; n++) {
      const k = block * hop + n;
      const turned = order * (signal.start + (2 * Math.PI * k) / samplesPerTurn);
      const weighted = (shape[n] as number) * (samples[k] as number);
      re += weighted * Math.cos(turned);
      im -= weighted * Math.sin(turned);
    }
    amplitudes[block] = ((order === 0 ? 1 : 2) * Math.hypot(re, im)) / sum;
    phases[block] = Math.atan2(im, re);
    const [begin, end] = [block * hop, block * hop + length - 1];
    speeds[block] = (2 * Math.PI * (length - 1)) / samplesPerTurn / ((times[end] as number) - (times[begin] as number));
  }
  return signalValue({ order, speeds, amplitudes, phases });
}
