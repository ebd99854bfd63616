import { type Adjuster, amountsOf, type Change, type CorrectionInput, mountingOf } from "@halfturn/engine/correction";

/** Where the slider of an adjuster can stand: what is in stock and nought, rising, in the engine's unit. */
export interface Stops {
  readonly adjuster: Adjuster;
  readonly amounts: readonly number[];
}

export const stopsOf = (input: CorrectionInput): readonly Stops[] =>
  input.adjusters.map((adjuster) => ({
    adjuster,
    amounts: [...amountsOf(adjuster, mountingOf(adjuster, input)), 0].sort((a, b) => a - b),
  }));

/** The stop nearest to an amount: what was worked out elsewhere may differ in its last digit. */
export function placeOf({ amounts }: Stops, amount: number): number {
  let best = 0;
  amounts.forEach((one, k) => {
    if (Math.abs(one - amount) < Math.abs((amounts[best] ?? 0) - amount)) best = k;
  });
  return best;
}

/** The changes with one adjuster at another amount; nought is no change. */
export const withAmount = (changes: readonly Change[], adjusterId: string, amount: number): readonly Change[] => [
  ...changes.filter((change) => change.adjusterId !== adjusterId),
  ...(amount === 0 ? [] : [{ adjusterId, amount }]),
];

/** What one step of each slider makes of the changes, those of the slider that was moved last first. */
export const stepsFrom = (changes: readonly Change[], stops: readonly Stops[]): readonly (readonly Change[])[] => {
  const last = changes.at(-1)?.adjusterId;
  const nearest = stops.toSorted((a, b) => Number(b.adjuster.id === last) - Number(a.adjuster.id === last));
  return nearest.flatMap((one) => {
    const { id } = one.adjuster;
    const place = placeOf(one, changes.find(({ adjusterId }) => adjusterId === id)?.amount ?? 0);
    return [place - 1, place + 1].flatMap((to) => {
      const amount = one.amounts[to];
      return amount === undefined ? [] : [withAmount(changes, id, amount)];
    });
  });
};
