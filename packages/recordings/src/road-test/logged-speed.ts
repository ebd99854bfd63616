import { inPieces, type PausedWork } from "@halfturn/engine/uncertainty";
import { throughColumn } from "../timing/through-column.js";
import type { Stamped } from "../timing/without-repeats.js";

/** Readings of a speed that an hour's drive can need: 140 a second, while a vehicle of any weight takes tenths of a second to change its speed (our choice). */
const MOST_READINGS = 500_000;

/** A speed and when it was read: every reading, or, of more than half a million, the means of as many neighbours as leave fewer. */
export async function loggedSpeed(
  { times, values }: Stamped,
  work: PausedWork,
): Promise<{ readonly times: Float64Array; readonly speeds: Float64Array }> {
  const group = Math.ceil(values.length / MOST_READINGS);
  return { times: await groupMeans(times, group, work), speeds: await groupMeans(values, group, work) };
}

async function groupMeans(column: Stamped["times"], group: number, { signal, pause }: PausedWork): Promise<Float64Array> {
  const means = new Float64Array(Math.ceil(column.length / group));
  let sum = 0;
  const visit = (value: number, k: number): void => {
    sum += value;
    const count = (k % group) + 1;
    if (count < group && k + 1 < column.length) return;
    means[Math.floor(k / group)] = sum / count;
    sum = 0;
  };
  await inPieces(throughColumn(column, 0, column.length, visit), { signal, pause });
  return means;
}
