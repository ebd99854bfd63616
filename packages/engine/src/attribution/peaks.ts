import { type OrderMap, orderMapsSteps } from "../signal/order-map.js";
import { overNoise } from "../signal/ridge.js";
import type { ShaftAngle } from "../signal/shaft-angle.js";
import { scaledSteps } from "../uncertainty/index.js";
import { presence } from "./cause-probabilities.js";
import type { Run } from "./run.js";

/** Turns of the wheel in a block of the map. */
const TURNS = 16;
/** Lines of the map per line that two turns could part. */
export const FINENESS = 4;
/** Lines to either side that tell the noise. */
const AROUND = 14 * FINENESS;
/** What stands out by so much is a line (natural logarithm of the odds). */
const CLEAR = 6;

/** Vibration over order and time, in units of the noise around. */
export interface WhitenedMap {
  readonly map: OrderMap;
  /** Power over noise, as the map's rows and lines; mean of the channels. */
  readonly rows: readonly Float64Array[];
  /** Mean of the rows. */
  readonly mean: Float64Array;
  readonly channels: number;
}

/** Orders by which two lines must differ to be two. */
export const resolution = ({ map }: WhitenedMap): number => map.orderSpacing * FINENESS;

/** Rows of a map that is held: some twenty minutes of them; beyond, neighbours are averaged. */
const MOST_ROWS = 1500;
/** Share of the work that is the map itself. */
const MAPPED = 0.8;

/** The map of a run up to the highest of some orders (cycles per turn) and what looseness adds; null where not one block fits. Yields the share done. */
export function* whitenedMap(
  run: Run,
  angle: ShaftAngle,
  perWheelTurn: number,
  orders: readonly number[],
  looseness: number,
): Generator<number, WhitenedMap | null> {
  const highestOrder = Math.max(...orders) * (1 + looseness) + 2 / perWheelTurn;
  const settings = { turns: Math.max(1, Math.round(TURNS * perWheelTurn)), highestOrder, fineness: FINENESS, rows: MOST_ROWS };
  const found = yield* scaledSteps(orderMapsSteps(run.readers, angle, settings), 0, MAPPED);
  if (!found.ok) return null;
  const maps = found.value;
  const [map] = maps as [OrderMap, ...OrderMap[]];
  const rows: Float64Array[] = [];
  for (let row = 0; row < map.times.length; row++) {
    const sum = new Float64Array(map.lines);
    for (const { meanSquare, lines } of maps) {
      const ratio = overNoise(meanSquare.slice(row * lines, (row + 1) * lines), AROUND);
      for (let k = 0; k < lines; k++) sum[k] = (sum[k] as number) + (ratio[k] as number) / maps.length;
    }
    rows.push(sum);
    if (row % 16 === 0) yield MAPPED + ((1 - MAPPED) * row) / map.times.length;
  }
  const mean = new Float64Array(map.lines);
  for (const row of rows) for (let k = 0; k < mean.length; k++) mean[k] = (mean[k] as number) + (row[k] as number) / rows.length;
  return { map, rows, mean, channels: maps.length };
}

/** Something that stands out of the mean over a run. */
export interface Peak {
  readonly order: number;
  /** Logarithm of the odds that it is a line. */
  readonly clearness: number;
}

/** Half-overlapping Hann blocks are worth so much of independent ones (P. D. Welch, IEEE Trans. Audio Electroacoust. 15(2), 1967: 11/18 of the blocks). */
const WORTH = 11 / 18;
/** A noise that is the median of so many lines is known about as well as this. */
const NOISE_FREEDOM = 20;

/** Clear peaks that an order within the looseness could be, the clearest first. */
export function peaksNear({ map, mean, rows, channels }: WhitenedMap, orders: readonly number[], looseness: number): readonly Peak[] {
  const blocks = Math.max(1, rows.length * channels * WORTH);
  const clearnessAt = (k: number): number =>
    presence({ noiseUnits: 2 * blocks * (mean[k] as number), blocks, freedom: NOISE_FREEDOM * Math.max(1, rows.length / 2) });
  const peaks: Peak[] = [];
  for (let k = 2; k < mean.length - 2; k++) {
    const [left, middle, right] = [mean[k - 1] as number, mean[k] as number, mean[k + 1] as number];
    if (!(middle > left && middle >= right)) continue;
    const order = (k + (right - left) / (2 * (2 * middle - left - right))) * map.orderSpacing;
    const clearness = clearnessAt(k);
    if (clearness > CLEAR && orders.some((own) => Math.abs(order / own - 1) <= looseness + map.orderSpacing / own))
      peaks.push({ order, clearness });
  }
  return mainOnes(
    peaks.sort((a, b) => b.clearness - a.clearness),
    map.orderSpacing * FINENESS * 2,
  );
}

/** Without the side lobes of stronger ones: peaks within a main lobe of a stronger one. */
function mainOnes(peaks: readonly Peak[], lobe: number): readonly Peak[] {
  const kept: Peak[] = [];
  for (const peak of peaks) if (kept.every(({ order }) => Math.abs(order - peak.order) > lobe)) kept.push(peak);
  return kept;
}
