import type { ResidualCourse } from "./fit-run.js";

/** A frequency that stays where it is while the speed changes. */
export interface Resonance {
  /** Hz. */
  readonly frequency: number;
  /** road: it rings by itself in what no order explains. orders: an order grows while it passes there. */
  readonly excitedBy: "road" | "orders";
  /** Share of the sum of squares; null where orders excite it, since theirs it is. */
  readonly share: number | null;
}

/** A peak stands this far above the noise to either side (common practice, no source). */
const STANDS_OUT = 4;
/** Cells to either side that are the surroundings, without the nearest. */
const NEAR = 8;
const FAR = 40;
/** Less is not worth a word. */
const LEAST_SHARE = 0.03;

/** Peaks of the residual that the slower and the faster half of a run have at one frequency. */
export function ringing({ spacing, slower, faster, speedRatio }: ResidualCourse): readonly Resonance[] {
  const both = slower.map((p, k) => (p + (faster[k] as number)) / 2);
  const total = both.length;
  const smooth = (cells: Float64Array): Float64Array =>
    cells.map((_, k) => ((cells[k - 1] ?? (cells[k] as number)) + 2 * (cells[k] as number) + (cells[k + 1] ?? (cells[k] as number))) / 4);
  const [all, slow, fast] = [smooth(both), smooth(slower), smooth(faster)];
  const found: Resonance[] = [];
  // Without surroundings on either side nothing stands out of them.
  for (let k = NEAR + 4; k < total - NEAR - 4; k++) {
    if (!isPeak(all, k)) continue;
    const floor = surroundings(all, k);
    const stands = (cells: Float64Array): boolean =>
      Math.max(...[k - 2, k - 1, k, k + 1, k + 2].map((i) => cells[i] as number)) > (STANDS_OUT / 2) * surroundings(cells, k);
    if ((all[k] as number) < STANDS_OUT * floor || !stands(slow) || !stands(fast) || moves(k, slow, fast, speedRatio)) continue;
    let share = 0;
    for (let i = k; i >= 0 && (all[i] as number) > 2 * floor; i--) share += (all[i] as number) / total;
    for (let i = k + 1; i < total && (all[i] as number) > 2 * floor; i++) share += (all[i] as number) / total;
    if (share >= LEAST_SHARE) found.push({ frequency: (k + 0.5) * spacing, excitedBy: "road", share: Math.min(1, share) });
  }
  return found.sort((a, b) => (b.share ?? 0) - (a.share ?? 0)).slice(0, 3);
}

/** A peak that goes along with the speed by more than this share of its change is some order that nobody listed. */
const STAYS = 0.3;
/** Where the speed hardly changed there is no telling, and nothing is said. */
const LEAST_CHANGE = 1.03;

function moves(k: number, slow: Float64Array, fast: Float64Array, speedRatio: number): boolean {
  if (speedRatio < LEAST_CHANGE) return true;
  const centre = (cells: Float64Array): number => {
    const floor = surroundings(cells, k);
    let [sum, moment] = [0, 0];
    for (let i = Math.max(0, k - FAR / 2); i <= Math.min(cells.length - 1, k + FAR / 2); i++) {
      const above = Math.max(0, (cells[i] as number) - floor);
      sum += above;
      moment += above * (i + 0.5);
    }
    return sum > 0 ? moment / sum : k;
  };
  return Math.abs(centre(fast) / centre(slow) - 1) > STAYS * (speedRatio - 1);
}

const isPeak = (cells: Float64Array, k: number): boolean => {
  for (let i = Math.max(0, k - NEAR); i <= Math.min(cells.length - 1, k + NEAR); i++)
    if ((cells[i] as number) > (cells[k] as number)) return false;
  return true;
};

/** The higher of the medians to the left and to the right: a slope has no peak on it. */
function surroundings(cells: Float64Array, k: number): number {
  const median = (from: number, to: number): number => {
    const part = cells.slice(Math.max(0, from), Math.max(0, to)).sort();
    return part.length < 3 ? 0 : (part[part.length >> 1] as number);
  };
  return Math.max(median(k - FAR, k - NEAR), median(k + NEAR + 1, k + FAR + 1));
}

/** How an order went: its middle frequency (Hz) and amplitude in each block in which it showed. */
export interface OrderCourse {
  readonly frequencies: readonly number[];
  readonly amplitudes: readonly number[];
}

/** An order is this much larger inside than at either end of its range where something resonates (common practice, no source). */
const GROWS = 1.5;
const BINS = 10;

/** The frequency at which an order is largest, where it falls off to either side; null where it does not, or where the speed hardly changed. */
export function passedResonance({ frequencies, amplitudes }: OrderCourse): number | null {
  const [low, high] = [Math.min(...frequencies), Math.max(...frequencies)];
  if (frequencies.length < 6 || high < 1.2 * low) return null;
  const bins = Array.from({ length: BINS }, () => ({ squares: 0, count: 0 }));
  for (const [i, f] of frequencies.entries()) {
    const bin = bins[Math.min(BINS - 1, Math.floor(((f - low) / (high - low)) * BINS))] as (typeof bins)[number];
    bin.squares += (amplitudes[i] as number) ** 2;
    bin.count++;
  }
  const filled = bins.flatMap(({ squares, count }, i) =>
    count === 0 ? [] : [{ frequency: low + ((i + 0.5) * (high - low)) / BINS, amplitude: Math.sqrt(squares / count) }],
  );
  const top = filled.reduce((best, bin) => (bin.amplitude > best.amplitude ? bin : best), { frequency: 0, amplitude: 0 });
  const least = (bins: typeof filled): number => Math.min(Number.POSITIVE_INFINITY, ...bins.map(({ amplitude }) => amplitude));
  const [below, above] = [
    least(filled.filter((b) => b.frequency < top.frequency)),
    least(filled.filter((b) => b.frequency > top.frequency)),
  ];
  return top.amplitude > GROWS * below && top.amplitude > GROWS * above && Number.isFinite(below + above) ? top.frequency : null;
}
