import type { SampleReader } from "@halfturn/engine/signal";
import type { PausedWork } from "@halfturn/engine/uncertainty";
import { cubicThrough, fourAround } from "./interpolate.js";
import { type Column, longColumn } from "./long-column.js";
import type { SpoolRoom } from "./sample-spool.js";
import { type SteadyRun, stepsIn } from "./stamp-steps.js";
import { lookInto } from "./through-column.js";
import type { Stamped } from "./without-repeats.js";

/** Samples worked out between two turns for others. */
const STRETCH = 65_536;

/** How a run of stamped samples becomes one of even steps: its number of samples and its start, and sample after sample from the first. */
interface Laying {
  readonly length: number;
  readonly start: number;
  readonly next: (n: number) => number;
}

/** Samples at whole numbers of steps; those that are missing are read off the cubic through their neighbours. */
export function countedRun({ times, values }: Stamped, { from, to, countedBy, steps, start }: SteadyRun): Laying {
  const [timeAt, valueAt] = [lookInto(times), lookInto(values)];
  let [k, place] = [from, 0];
  const stepTo = (index: number): number => stepsIn(timeAt(index) - timeAt(index - 1), countedBy);
  return {
    length: steps + 1,
    start,
    next: (n) => {
      while (k + 1 < to && place + stepTo(k + 1) <= n) place += stepTo(++k);
      if (place === n) return valueAt(k);
      const { first, last } = fourAround(k, from, to);
      let at = place;
      for (let i = k; i > first; i--) at -= stepTo(i);
      const places = [at];
      for (let i = first + 1; i < last; i++) places.push((places.at(-1) as number) + stepTo(i));
      return cubicThrough(places, range(first, last, valueAt), n);
    },
  };
}

/** Samples read off the cubic through the stamped ones. */
export function interpolatedRun({ times, values }: Stamped, { from, to }: SteadyRun, step: number): Laying {
  const [timeAt, valueAt] = [lookInto(times), lookInto(values)];
  const start = timeAt(from);
  const length = Math.floor((timeAt(to - 1) - start) / step) + 1;
  let k = from;
  return {
    length,
    start,
    next: (n) => {
      const time = start + n * step;
      while (k + 1 < to && timeAt(k + 1) <= time) k++;
      const { first, last } = fourAround(k, from, to);
      return cubicThrough(range(first, last, timeAt), range(first, last, valueAt), time);
    },
  };
}

const range = (first: number, last: number, at: (k: number) => number): readonly number[] => {
  const numbers: number[] = [];
  for (let k = first; k < last; k++) numbers.push(at(k));
  return numbers;
};

/** Works a run out, a stretch at a time. */
export async function laidOut({ length, start, next }: Laying, rate: number, room: SpoolRoom, work: PausedWork): Promise<SampleReader> {
  const samples = longColumn(room);
  for (let first = 0; first < length; first += STRETCH) {
    const part = new Float64Array(Math.min(STRETCH, length - first));
    for (let n = 0; n < part.length; n++) part[n] = next(first + n);
    await samples.push(part);
    await work.pause?.();
    work.signal?.throwIfAborted();
  }
  return readerOn(samples, rate, start);
}

/** A column as samples at `rate` Hz from `start` s on. */
export const readerOn = ({ length, read }: Column, rate: number, start: number): SampleReader => ({ rate, start, length, read });
