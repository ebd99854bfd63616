import type { Path } from "./path.js";
import type { ProblemCode, ProblemParams } from "./problem.js";
import type { PlacedProblem } from "./sort-problems.js";

/** A problem at a place; the compiler sees to it that the params are those of the code. */
export const placed = <Code extends ProblemCode>(place: Path, code: Code, params: ProblemParams[Code]): PlacedProblem => ({
  place,
  code,
  params,
});
