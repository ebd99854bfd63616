/** Work as a part of a longer one: its share of progress, 0 to 1, becomes `from` to `from` + `share`. */
export function* scaledSteps<Result>(steps: Generator<number, Result>, from: number, share: number): Generator<number, Result> {
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value;
    yield from + share * step.value;
  }
}
