import { followRidge } from "../signal/ridge.js";
import { FINENESS, type WhitenedMap } from "./peaks.js";

/** Least and greatest factor of its middle speed by which a slipping part turned. */
export interface SlipRange {
  readonly low: number;
  readonly high: number;
}

/** Mean over the rows of the summed logarithms of power over noise along a way: noise alone reaches 0.3 on made-up drives, orders from -6 dB on more than 3. */
const THERE = 1.5;
/** By so much in sum a way that moves explains more than the best that stays: 10 at most where the slip was steady. */
const MOVES = 12;
/** A change by less than this share hardly smears an order (common practice, no source). */
const WORTH_A_WORD = 0.01;
/** Of the way's rows, as many at either end are left out: an outlier is no change. */
const TAIL = 0.1;

/**
 * Follows all orders of what slips together through a run, as factors within 1 +/- `most`, and says between which they moved; null where they stayed or nothing is clear.
 * own, geared: cycles per turn of the reference shaft, of what slips and of what does not; where a geared order lies nothing is read.
 */
export function slipCourse({ map, rows }: WhitenedMap, own: readonly number[], geared: readonly number[], most: number): SlipRange | null {
  const spacing = map.orderSpacing / Math.max(...own);
  const half = Math.max(1, Math.ceil(most / spacing));
  const states = 2 * half + 1;
  const taken = new Uint8Array(map.lines);
  for (const order of geared) {
    const middle = Math.round(order / map.orderSpacing);
    taken.fill(1, Math.max(0, middle - 2 * FINENESS), middle + 2 * FINENESS + 1);
  }
  const scores = new Float64Array(rows.length * states);
  // With what lies on geared orders too: a line that stays there may be the part's own, and its skirts are no way that moves.
  const steady = new Float64Array(states);
  for (const [i, row] of rows.entries())
    for (let s = 0; s < states; s++) {
      let [sum, all] = [0, 0];
      for (const order of own) {
        const line = Math.round((order * (1 + (s - half) * spacing)) / map.orderSpacing);
        const score = Math.log(Math.max(0.5, row[line] ?? 0.5));
        all += score;
        if (taken[line] === 0) sum += score;
      }
      scores[i * states + s] = sum;
      steady[s] = (steady[s] as number) + all;
    }
  const { states: path, score } = followRidge(scores, states, Math.max(2, Math.ceil(half / 8)), 2);
  if (score < THERE || score * rows.length - Math.max(...steady) < MOVES) return null;
  const factors = [...path].map((s) => 1 + (s - half) * spacing).sort((a, b) => a - b);
  const tail = Math.floor(TAIL * factors.length);
  const [low, high] = [factors[tail] as number, factors[factors.length - 1 - tail] as number];
  return high - low > WORTH_A_WORD ? { low, high } : null;
}

/**
 * Shares by which a part ran ahead of what is geared to the wheel, of factors of its middle speed; it was put at its middle slip, which is `most`, as much as it may be
 * away from it. The ways of slipCourse run on whole steps of the map, of which the outermost lie up to one beyond `most`: a converter that closes wholly then seems
 * to be driven by the wheels. On a drive it is not, so that nothing below 0 is given.
 */
export const sharesAhead = ({ low, high }: SlipRange, most: number): { readonly least: number; readonly most: number } => ({
  least: Math.max(0, low * (1 + most) - 1),
  most: high * (1 + most) - 1,
});
