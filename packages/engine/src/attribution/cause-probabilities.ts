/** What speaks for an order: its share of the vibration, and how far it stands out of the noise. */
export interface OrderEvidence {
  /** Share of the sum of squares, with its standard uncertainty. */
  readonly share: number;
  readonly u: number;
  /** Sum of squared amplitudes in units of the noise, chi-squared of 2 `blocks` degrees of freedom where there is nothing but noise of `freedom`. */
  readonly noiseUnits: number;
  readonly blocks: number;
  readonly freedom: number;
}

/** How probable each order is as the largest contribution, and that none is there at all. They add up to 1. */
export interface CauseProbabilities {
  readonly orders: readonly number[];
  readonly none: number;
}

/**
 * Logarithm of how many times more probable the amplitudes are if the order is there than if only noise is. The likelihood ratio of two variances,
 * less half the logarithm of their number for the one unknown more (G. Schwarz, "Estimating the dimension of a model", Ann. Stat. 6(2), 1978); at least none.
 */
export function presence({ noiseUnits, blocks, freedom }: Pick<OrderEvidence, "noiseUnits" | "blocks" | "freedom">): number {
  const n = 2 * blocks;
  const ratio = noiseUnits / n;
  const penalty = Math.log(n) / 2;
  if (ratio <= 1) return -penalty;
  return ((n + freedom) / 2) * Math.log((n * ratio + freedom) / (n + freedom)) - (n / 2) * Math.log(ratio) - penalty;
}

/** Beyond this everything is certain to the last digit. */
const CERTAIN = 500;

/** Weighs "this order is the largest" and "no order is there", the latter as likely beforehand as all orders together. */
export function causeProbabilities(evidence: readonly OrderEvidence[]): CauseProbabilities {
  const logs = evidence.map((order) => Math.min(CERTAIN, presence(order)));
  const odds = logs.reduce((sum, log) => sum + Math.exp(log) / logs.length, 0);
  const none = 1 / (1 + odds);
  const largest = probabilityOfLargest(evidence, logs);
  return { orders: largest.map((p) => p * (1 - none)), none };
}

/** Steps over which a density is summed, and its reach in standard deviations. */
const STEPS = 200;
const REACH = 6;

/** Of independent normal shares, how probable each is the largest, weighed by how probable it is there at all. */
function probabilityOfLargest(evidence: readonly OrderEvidence[], logs: readonly number[]): readonly number[] {
  const least = Math.max(...evidence.map(({ u, share }) => Math.max(u, 1e-12 * Math.abs(share)))) * 1e-9 + Number.MIN_VALUE;
  const raw = evidence.map((own, i) => {
    const u = Math.max(own.u, least);
    let sum = 0;
    for (let step = 0; step < STEPS; step++) {
      const z = ((step + 0.5) / STEPS - 0.5) * 2 * REACH;
      let product = Math.exp((-z * z) / 2);
      for (const [j, other] of evidence.entries())
        if (j !== i) product *= normalBelow((own.share + z * u - other.share) / Math.max(other.u, least));
      sum += product;
    }
    const there = Math.exp(Math.min(CERTAIN, logs[i] as number));
    return (sum * there) / (1 + there);
  });
  const total = raw.reduce((a, b) => a + b, 0);
  return raw.map((p) => (total > 0 ? p / total : 1 / raw.length));
}

/** Normal distribution function. Source: Abramowitz and Stegun, 26.2.17 (error below 7.5e-8). */
function normalBelow(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const tail =
    (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) *
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return z > 0 ? 1 - tail : tail;
}
