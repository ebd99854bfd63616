export type Direction = "plus" | "minus";

/** The signed value of an amount; null while it is not known which way it goes. Nought goes no way. */
export function directedAmount(amount: number | null, direction: Direction | null): number | null {
  if (amount === null || amount === 0) return amount;
  if (direction === null) return null;
  return direction === "plus" ? amount : -amount;
}
