/** Value at a time on the polynomial through the samples given, as a rule four around it (Lagrange). Times and values alike in number. */
export function cubicThrough(times: readonly number[], values: readonly number[], time: number): number {
  let sum = 0;
  for (let i = 0; i < times.length; i++) {
    let weight = values[i] as number;
    for (let j = 0; j < times.length; j++) {
      if (j !== i) weight *= (time - (times[j] as number)) / ((times[i] as number) - (times[j] as number));
    }
    sum += weight;
  }
  return sum;
}

/** The samples of [from, to) that the cubic at a time goes through: four around it, at the ends the first or last four. `k`: the one at or before the time. */
export function fourAround(k: number, from: number, to: number): { readonly first: number; readonly last: number } {
  const first = Math.max(from, Math.min(k - 1, to - 4));
  return { first, last: Math.min(to, first + 4) };
}
