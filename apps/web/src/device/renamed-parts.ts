/** Rows that are called otherwise by now, each from its old part to its new one. A list in which a row came or went has the others under their own names still. */
export function renamedParts(before: readonly string[], now: readonly string[]): readonly (readonly [from: string, to: string])[] {
  if (before.length !== now.length) return [];
  return before.flatMap((from, k) => {
    const to = now[k] as string;
    return before.includes(to) || now.includes(from) ? [] : [[from, to] as const];
  });
}
