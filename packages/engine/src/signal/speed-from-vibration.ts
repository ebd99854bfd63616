import { realFft, transformSize } from "./real-fft.js";
import { followRidge, overNoise } from "./ridge.js";
import type { SampleReader } from "./sample-reader.js";
import { type ShaftAngle, shaftAngleFromSpeeds } from "./shaft-angle.js";
import { type SignalResult, signalFault, signalValue } from "./signal-fault.js";
import { windowSamples } from "./window.js";

/** What is known of a shaft whose speed nobody wrote down. */
export interface RidgeSettings {
  /** Orders of the shaft that are followed together, such as the one that shakes; one or more, > 0. */
  readonly orders: readonly number[];
  /** The shaft's least and greatest speed in the recording, rad/s. The narrower, the surer. */
  readonly slowest: number;
  readonly fastest: number;
  /** Greatest change of speed, rad/s^2; 8 when left out, as a shaft of 40 turns a second gains while the vehicle gains 3 km/h each second. */
  readonly acceleration?: number;
  /** Seconds to a block; 1 when left out. */
  readonly block?: number;
}

/** A speed found in the vibration. */
export interface RidgeSpeed {
  readonly angle: ShaftAngle;
  /** Middles of the blocks, seconds, and the shaft's speed in each, rad/s. */
  readonly times: Float64Array;
  readonly speeds: Float64Array;
  /** How far the ridge stands above the noise around it: mean of the logarithm of the ratio of powers. Noise alone gives some 0.5. */
  readonly clearness: number;
}

/** Below this a ridge may be one of noise: 400 ridges through noise alone came to 0.6 at most (speed-from-vibration.test.ts). */
const CLEAR = 1;
const FINENESS = 4;
/** Lines to either side that tell the noise, in lines of one over the block. */
const AROUND = 12;

/** The whole at once; see speedFromVibrationSteps. */
export function speedFromVibration(reader: SampleReader, settings: RidgeSettings): SignalResult<RidgeSpeed> {
  const steps = speedFromVibrationSteps(reader, settings);
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
}

/**
 * Speed and angle of a shaft from the ridge that its orders draw in the spectrum over time; yields the share done. The angle has no zero of its own.
 * Holds a row of speeds for every half block. Faults: signal.bad-rate; signal.too-short (under three blocks); shaft-angle.no-ridge where nothing stands out.
 */
export function* speedFromVibrationSteps(reader: SampleReader, settings: RidgeSettings): Generator<number, SignalResult<RidgeSpeed>> {
  const { orders, slowest, fastest, acceleration = 8, block = 1 } = settings;
  if (!(slowest > 0 && fastest > slowest && orders.length > 0))
    throw new RangeError("a range of speeds above zero and an order are needed");
  const { rate } = reader;
  if (!(rate > 0 && Number.isFinite(rate))) return signalFault("signal.bad-rate", "rate", { rate });
  const length = Math.round(block * rate);
  const hop = Math.max(1, Math.round(length / 2));
  const rows = Math.floor((reader.length - length) / hop) + 1;
  if (!(rows >= 5)) return signalFault("signal.too-short", "samples", { samples: reader.length, needed: length + 4 * hop });
  const size = transformSize(length) * FINENESS;
  const lineSpeed = (2 * Math.PI * rate) / size;
  const step = lineSpeed / (2 * Math.max(...orders));
  const states = Math.floor((fastest - slowest) / step) + 1;
  const fft = realFft(size);
  const shape = windowSamples("hann", length);
  const samples = new Float64Array(length);
  const scores = new Float64Array(rows * states);
  for (let row = 0; row < rows; row++) {
    reader.read(row * hop, samples);
    const { re, im } = fft(samples.map((x, n) => x * (shape[n] as number)));
    const ratio = overNoise(
      re.map((x, k) => x * x + (im[k] as number) ** 2),
      Math.ceil((AROUND * size) / length),
    );
    for (let state = 0; state < states; state++) {
      let score = 0;
      for (const order of orders) score += Math.log(Math.max(0.5, between(ratio, (order * (slowest + state * step)) / lineSpeed)));
      scores[row * states + state] = score / orders.length;
    }
    if (row % 16 === 0) yield (0.9 * row) / rows;
  }
  const reach = Math.max(1, Math.ceil((acceleration * hop) / rate / step));
  const ridge = followRidge(scores, states, reach, STIFFNESS);
  if (ridge.score < CLEAR) return signalFault("shaft-angle.no-ridge", "samples", { clearness: ridge.score, needed: CLEAR });
  const speeds = ridge.states.map((state) => slowest + state * step);
  const times = speeds.map((_, row) => reader.start + (row * hop + (length - 1) / 2) / rate);
  const angle = shaftAngleFromSpeeds(...wholeRun(times, speeds, reader));
  return angle.ok ? signalValue({ angle: angle.value, times, speeds, clearness: ridge.score }) : angle;
}

/** Cost of the largest move allowed: that of a score one e-fold weaker. */
const STIFFNESS = 1;

const between = (values: Float64Array, place: number): number => {
  const i = Math.floor(place);
  const share = place - i;
  return (values[i] ?? 0) * (1 - share) + (values[i + 1] ?? 0) * share;
};

/** The first and last speeds hold to the ends of the recording. */
function wholeRun(times: Float64Array, speeds: Float64Array, reader: SampleReader): readonly [Float64Array, Float64Array] {
  const end = reader.start + (reader.length - 1) / reader.rate;
  return [Float64Array.of(reader.start, ...times, end), Float64Array.of(speeds[0] as number, ...speeds, speeds.at(-1) as number)];
}
