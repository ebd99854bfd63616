/** Something that wants its middle at `wanted` and takes `size` on both sides together. */
export interface Spreadable {
  readonly wanted: number;
  readonly size: number;
}

/**
 * Middles of labels along one direction, in the order given: none overlaps another, all stay within [low, high], and the sum of squared moves is least.
 * null when they do not fit. With the sizes taken off, keeping the order is an isotonic regression (pool adjacent violators).
 */
export function spread(items: readonly Spreadable[], low: number, high: number, gap: number): readonly number[] | null {
  if (items.length === 0) return [];
  const starts: number[] = [];
  let taken = 0;
  for (const { size } of items) {
    starts.push(taken + size / 2);
    taken += size + gap;
  }
  if (taken - gap > high - low + 1e-9) return null;

  const pools: { sum: number; count: number }[] = [];
  items.forEach(({ wanted }, k) => {
    pools.push({ sum: wanted - (starts[k] as number), count: 1 });
    for (;;) {
      const last = pools[pools.length - 1];
      const before = pools[pools.length - 2];
      if (!last || !before || before.sum / before.count <= last.sum / last.count) break;
      pools.pop();
      before.sum += last.sum;
      before.count += last.count;
    }
  });
  const slack = high - low - (taken - gap);
  const levels = pools.flatMap(({ sum, count }) => new Array<number>(count).fill(Math.min(low + slack, Math.max(low, sum / count))));
  return levels.map((level, k) => level + (starts[k] as number));
}
