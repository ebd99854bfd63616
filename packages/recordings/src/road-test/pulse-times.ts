import { risingEdges } from "@halfturn/engine/signal";
import { inPieces, type PausedWork } from "@halfturn/engine/uncertainty";
import { throughColumn } from "../timing/through-column.js";
import type { Stamped } from "../timing/without-repeats.js";
import { steadiedPulses } from "./steadied-pulses.js";

const STRETCH = 262_144;

/**
 * Moments, in seconds, at which a tachometer's signal rises half way between rest and mark: through 0.5 of a column of 0 and 1, and right for a raw voltage
 * too. Of a column of two values only, whose edges lie anywhere within a step, the pulses are steadied. Goes through the columns twice.
 */
export async function pulseTimes({ times, values }: Stamped, work: PausedWork): Promise<Float64Array> {
  const quiet = { signal: work.signal, pause: work.pause };
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  let [first, other, square] = [Number.NaN, Number.NaN, true];
  await inPieces(
    throughColumn(values, 0, values.length, (value, k) => {
      low = Math.min(low, value);
      high = Math.max(high, value);
      if (k === 0) first = value;
      else if (value !== first && Number.isNaN(other)) other = value;
      if (value !== first && value !== other) square = false;
    }),
    quiet,
  );
  const edges: number[] = [];
  // Stretches share a sample, so that an edge between two of them is not missed.
  for (let from = 0; from < values.length - 1; from += STRETCH) {
    const length = Math.min(STRETCH + 1, values.length - from);
    const [stamps, samples] = [new Float64Array(length), new Float64Array(length)];
    times.read(from, stamps);
    values.read(from, samples);
    for (const edge of risingEdges(stamps, samples, (low + high) / 2)) edges.push(edge);
    await work.pause?.();
    work.signal?.throwIfAborted();
  }
  const found = Float64Array.from(edges);
  return square ? steadiedPulses(found) : found;
}
