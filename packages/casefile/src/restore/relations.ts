import { type Path, type PlacedProblem, pathText, placed } from "../problems/index.js";

/** Every id after the first of its kind. */
export function duplicateIds(items: readonly { readonly id: string }[], list: Path): readonly PlacedProblem[] {
  const first = new Map<string, number>();
  return items.flatMap(({ id }, k) => {
    const before = first.get(id);
    if (before !== undefined) return [placed([...list, k, "id"], "duplicate-id", { id, first: pathText([...list, before, "id"]) })];
    first.set(id, k);
    return [];
  });
}

type MaybeNumber = number | null | undefined;

/** A problem at `place` where its number does not stand in the relation to the other; nothing is said while either is not given. */
export function contradicts(
  place: Path,
  [got, relation, limit]: readonly [got: MaybeNumber, relation: "at-least" | "less-than", limit: MaybeNumber],
  other: string,
): readonly PlacedProblem[] {
  if (typeof got !== "number" || typeof limit !== "number") return [];
  if (relation === "at-least" ? got >= limit : got < limit) return [];
  const last = place.at(-1);
  const key = typeof last === "number" ? `${place.at(-2)}[${last}]` : String(last);
  return [placed(place, "contradiction", { key, relation, other, got, limit })];
}
