import { angleThrough } from "../signal/angle-through.js";
import type { SampleReader } from "../signal/sample-reader.js";
import type { ShaftAngle } from "../signal/shaft-angle.js";

/** Turns of the wheel in a window, and from one to the next. Lines within half a wheel order of the one that is followed pull at it. */
const WINDOW = 4;
const HOP = 2;
/** How alike one step of phase is to the next: mean of the unit vectors of their differences. Of noise nearly 0, of a line whose speed changes slowly nearly 1. */
const AGREEING = 0.7;

/**
 * Sets an angle right by the phase of one clear order, `order` cycles per turn: where the order runs ahead of the angle, the angle is moved on. The order must be
 * known to a quarter of a wheel order. Null where its phase is not clear, or the run too short; yields the share done.
 */
export function* lockPhase(
  readers: readonly SampleReader[],
  angle: ShaftAngle,
  order: number,
  perWheelTurn: number,
): Generator<number, ShaftAngle | null> {
  const [first] = readers;
  if (first === undefined) return null;
  const turn = 2 * Math.PI * perWheelTurn;
  const [from, to] = [Math.max(angle.start, first.start), Math.min(angle.end, first.start + (first.length - 1) / first.rate)];
  const [begin, end] = [angle.angleAt(from), angle.angleAt(to)];
  const count = Math.floor((end - begin - WINDOW * turn) / (HOP * turn)) + 1;
  if (count < 4) return null;
  const angles = new Float64Array(count);
  const phases = new Float64Array(count);
  let before: readonly Phasor[] = [];
  let [lastStep, re, im] = [0, 0, 0];
  for (let i = 0; i < count; i++) {
    const low = begin + i * HOP * turn;
    angles[i] = low + (WINDOW / 2) * turn;
    const now = phasorsOf(readers, angle, order, low, low + WINDOW * turn);
    if (i > 0) {
      const step = stepBetween(before, now);
      phases[i] = (phases[i - 1] as number) + step;
      if (i > 1) re += Math.cos(step - lastStep) / (count - 2);
      if (i > 1) im += Math.sin(step - lastStep) / (count - 2);
      lastStep = step;
    }
    before = now;
    if (i % 8 === 0) yield i / count;
  }
  if (Math.hypot(re, im) < AGREEING) return null;
  const times = angles.map(angle.timeOf);
  const moved = smoothed(phases).map((phase, i) => (angles[i] as number) + phase / order);
  return wholeRun(angle, times, moved);
}

interface Phasor {
  readonly re: number;
  readonly im: number;
}

/** Every channel's phasor in one window; the wave is worked out once for all. */
function phasorsOf(readers: readonly SampleReader[], angle: ShaftAngle, order: number, low: number, high: number): readonly Phasor[] {
  const [{ start, rate, length }] = readers as [SampleReader, ...SampleReader[]];
  const a = Math.max(0, Math.ceil((angle.timeOf(low) - start) * rate));
  const b = Math.min(length, Math.floor((angle.timeOf(high) - start) * rate));
  const count = Math.max(0, b - a);
  const [cosine, sine] = [new Float64Array(count), new Float64Array(count)];
  for (let n = 0; n < count; n++) {
    const phase = order * angle.angleAt(start + (a + n) / rate);
    const weight = 0.5 - 0.5 * Math.cos((2 * Math.PI * (n + 0.5)) / count);
    cosine[n] = weight * Math.cos(phase);
    sine[n] = weight * Math.sin(phase);
  }
  const samples = new Float64Array(count);
  return readers.map((reader) => {
    reader.read(a, samples);
    let mean = 0;
    for (const x of samples) mean += x / count;
    let [re, im] = [0, 0];
    for (let n = 0; n < count; n++) {
      const x = (samples[n] as number) - mean;
      re += x * (cosine[n] as number);
      im -= x * (sine[n] as number);
    }
    return { re, im };
  });
}

/** By how much the phase went on from one window to the next, all channels together: the stronger count for more. */
function stepBetween(before: readonly Phasor[], now: readonly Phasor[]): number {
  let [re, im] = [0, 0];
  for (const [i, b] of now.entries()) {
    const a = before[i] as Phasor;
    re += b.re * a.re + b.im * a.im;
    im += b.im * a.re - b.re * a.im;
  }
  return Math.atan2(im, re);
}

const smoothed = (values: Float64Array): Float64Array =>
  values.map((value, i) =>
    i === 0 || i === values.length - 1 ? value : ((values[i - 1] as number) + 2 * value + (values[i + 1] as number)) / 4,
  );

/** Before the first window's middle and behind the last's the old angle goes on. Null where the correction would turn the shaft backwards. */
function wholeRun(angle: ShaftAngle, times: Float64Array, moved: Float64Array): ShaftAngle | null {
  const last = times.length - 1;
  const ahead = (i: number): number => (moved[i] as number) - angle.angleAt(times[i] as number);
  const inner = (time: number): boolean => time > angle.start && time < angle.end;
  const before = Array.from({ length: EDGE }, (_, k) => angle.start + (((times[0] as number) - angle.start) * k) / EDGE);
  const behind = Array.from({ length: EDGE }, (_, k) => (times[last] as number) + ((angle.end - (times[last] as number)) * (k + 1)) / EDGE);
  const allTimes = [...before, ...times, ...behind];
  const allAngles = [...before.map((t) => angle.angleAt(t) + ahead(0)), ...moved, ...behind.map((t) => angle.angleAt(t) + ahead(last))];
  if (!times.every(inner) || allAngles.some((value, i) => i > 0 && !(value > (allAngles[i - 1] as number)))) return null;
  const zero = allAngles[0] as number;
  return angleThrough(
    Float64Array.from(allTimes),
    Float64Array.from(allAngles, (value) => value - zero),
  );
}

/** Places at which the old angle is taken over at either end. */
const EDGE = 4;
