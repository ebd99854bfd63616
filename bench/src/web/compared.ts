export interface Compared {
  readonly ms: number;
  readonly allowed: number;
  readonly ratio: number;
}

/** How long so great a share of the presses take at most, beside what the same share of the yardstick's runs do: a machine with other work spreads both. */
export function compared(presses: readonly number[], yardsticks: readonly number[], share: number): Compared {
  const [ms, allowed] = [atShare(presses, share), atShare(yardsticks, share)];
  return { ms, allowed, ratio: ms / allowed };
}

function atShare(times: readonly number[], share: number): number {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.ceil(sorted.length * share) - 1] ?? Number.NaN;
}

export const inMs = (ms: number): string => ms.toFixed(0).padStart(3);
