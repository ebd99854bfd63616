import { type Path, pathText } from "./path.js";
import type { Problem } from "./problem.js";

/** A problem whose place is still a list of steps. */
export interface PlacedProblem {
  readonly place: Path;
  readonly code: Problem["code"];
  readonly params: Problem["params"];
}

/** Where each step of a path stands among its siblings as the file has them; a missing key comes after all that are there. */
function ranks(root: unknown, place: Path): readonly number[] {
  let value = root;
  return place.map((part) => {
    const parent = value;
    value = typeof parent === "object" && parent !== null ? (parent as Record<string | number, unknown>)[part] : undefined;
    if (typeof part === "number") return part;
    const keys = typeof parent === "object" && parent !== null ? Object.keys(parent) : [];
    const rank = keys.indexOf(part);
    return rank < 0 ? keys.length : rank;
  });
}

function compareRanks(a: readonly number[], b: readonly number[]): number {
  for (let k = 0; k < Math.min(a.length, b.length); k++) {
    const difference = (a[k] ?? 0) - (b[k] ?? 0);
    if (difference !== 0) return difference;
  }
  return a.length - b.length;
}

/** Problems in the order in which a reader meets them in the file; equal places keep the order in which they were found. */
export function sortProblems(root: unknown, placed: readonly PlacedProblem[]): readonly Problem[] {
  return placed
    .map((problem) => ({ problem, rank: ranks(root, problem.place) }))
    .sort((a, b) => compareRanks(a.rank, b.rank))
    .map(({ problem }) => ({ code: problem.code, path: pathText(problem.place), params: problem.params }) as Problem);
}
