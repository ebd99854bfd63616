import type { PausedWork } from "@halfturn/engine/uncertainty";
import { type Column, type LongColumn, longColumn } from "./long-column.js";
import type { SpoolRoom } from "./sample-spool.js";

/** Samples with their times. */
export interface Stamped {
  readonly times: Column;
  readonly values: Column;
}

const STRETCH = 65_536;

/** Of several samples at one time the first stays. Times: never falling. */
export async function withoutRepeats({ times, values }: Stamped, room: SpoolRoom, work: PausedWork): Promise<Stamped> {
  const kept = { times: longColumn(room), values: longColumn(room) };
  let before = Number.NaN;
  for (let first = 0; first < times.length; first += STRETCH) {
    const length = Math.min(STRETCH, times.length - first);
    const [stamps, samples] = [new Float64Array(length), new Float64Array(length)];
    times.read(first, stamps);
    values.read(first, samples);
    const stays = (k: number): boolean => stamps[k] !== (k > 0 ? stamps[k - 1] : before);
    await pushKept(kept.times, stamps, stays);
    await pushKept(kept.values, samples, stays);
    before = stamps[length - 1] as number;
    await work.pause?.();
    work.signal?.throwIfAborted();
  }
  return kept;
}

const pushKept = (column: LongColumn, numbers: Float64Array, stays: (k: number) => boolean): Promise<void> =>
  column.push(numbers.filter((_, k) => stays(k)));
