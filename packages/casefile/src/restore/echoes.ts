import { type PlacedProblem, pathText } from "../problems/index.js";

/** The problems without those that another one says better: a key that is missing only because it is spelled wrong beside, a number that is no size but a face's display. */
export function withoutEchoes(problems: readonly PlacedProblem[], better: readonly PlacedProblem[]): readonly PlacedProblem[] {
  const meant = new Set(
    problems.flatMap(({ code, place, params }) =>
      code === "unknown-key-near" && "suggestion" in params ? [pathText([...place.slice(0, -1), String(params.suggestion)])] : [],
    ),
  );
  const said = new Set(better.map(({ place }) => pathText(place)));
  return problems.filter(({ code, place }) => {
    const at = pathText(place);
    return !(code === "missing" && meant.has(at)) && !(code === "out-of-range" && said.has(at));
  });
}
