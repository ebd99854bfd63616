/** Value at a time on the cubic through the four samples around it (Lagrange); at the ends through the first or last four. `k`: the sample at or before the time. */
export function cubicAt(times: Float64Array, values: Float64Array, from: number, to: number, k: number, time: number): number {
  const first = Math.max(from, Math.min(k - 1, to - 4));
  const last = Math.min(to, first + 4);
  let sum = 0;
  for (let i = first; i < last; i++) {
    let weight = values[i] as number;
    for (let j = first; j < last; j++) {
      if (j !== i) weight *= (time - (times[j] as number)) / ((times[i] as number) - (times[j] as number));
    }
    sum += weight;
  }
  return sum;
}
