/** Medians of exponentially distributed powers lie this far below their mean. */
const MEDIAN_OF_POWER = Math.LN2;

/**
 * Powers over the noise around them: 1 on average where there is nothing but noise. The noise is the median over `around` lines to either side, found at
 * every `around`-th line and joined by straight lines, so that a narrow peak does not hide itself.
 */
export function overNoise(power: Float64Array, around: number): Float64Array {
  const nodes = Math.max(1, Math.floor((power.length - 1) / around));
  const gap = (power.length - 1) / nodes;
  const floor = Float64Array.from({ length: nodes + 1 }, (_, i) => {
    const middle = Math.round(i * gap);
    const sorted = power.slice(Math.max(0, middle - around), middle + around + 1).sort();
    return (sorted[sorted.length >> 1] as number) / MEDIAN_OF_POWER;
  });
  const least = Number.MIN_VALUE + 1e-12 * Math.max(...floor);
  return power.map((p, k) => {
    const i = Math.min(nodes - 1, Math.floor(k / gap));
    const share = k / gap - i;
    return p / Math.max(least, (floor[i] as number) * (1 - share) + (floor[i + 1] as number) * share);
  });
}

/** A path through rows of scores, one state a row. */
export interface Ridge {
  /** State of each row, to a fraction of a state. */
  readonly states: Float64Array;
  /** Mean score along the path. */
  readonly score: number;
}

/**
 * The path of the greatest sum of scores that moves by at most `reach` states from row to row, each move costing (move/reach)^2 times `stiffness`.
 * scores: row i, state k at i states + k. Exact, by dynamic programming (G. D. Forney, "The Viterbi algorithm", Proc. IEEE 61(3), 1973).
 */
export function followRidge(scores: Float64Array, states: number, reach: number, stiffness: number): Ridge {
  const rows = scores.length / states;
  const from = new Int32Array(scores.length);
  let best = scores.slice(0, states);
  for (let row = 1; row < rows; row++) {
    const next = new Float64Array(states);
    for (let k = 0; k < states; k++) {
      let [most, where] = [Number.NEGATIVE_INFINITY, k];
      for (let j = Math.max(0, k - reach); j <= Math.min(states - 1, k + reach); j++) {
        const value = (best[j] as number) - stiffness * ((k - j) / reach) ** 2;
        if (value > most) [most, where] = [value, j];
      }
      next[k] = most + (scores[row * states + k] as number);
      from[row * states + k] = where;
    }
    best = next;
  }
  let state = best.indexOf(Math.max(...best));
  const path = new Float64Array(rows);
  let sum = 0;
  for (let row = rows - 1; row >= 0; row--) {
    const at = (k: number): number => scores[row * states + k] ?? Number.NEGATIVE_INFINITY;
    path[row] = state + vertex(state === 0 ? 0 : at(state - 1), at(state), state === states - 1 ? 0 : at(state + 1));
    sum += at(state) / rows;
    state = from[row * states + state] as number;
  }
  return { states: path, score: sum };
}

/** Where the parabola through three neighbours is greatest, within half a step of the middle; 0 where it is not a peak. */
function vertex(left: number, middle: number, right: number): number {
  const bent = 2 * middle - left - right;
  return middle < left || middle < right || bent <= 0 ? 0 : (right - left) / (2 * bent);
}
