const ROUND = [1, 2, 5, 10];

/** Round numbers from 0 to a greatest value, at most so many steps. */
export function roundTicks(greatest: number, most: number): readonly number[] {
  const rough = greatest / Math.max(1, most);
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * (ROUND.find((one) => one * power >= rough) ?? 10);
  return Array.from({ length: Math.floor(greatest / step + 1e-9) + 1 }, (_, k) => k * step);
}
