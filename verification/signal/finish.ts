import type { SignalResult } from "@halfturn/engine/signal";

/** The value of work that comes in steps and must succeed. */
export function finish<Value>(steps: Generator<number, SignalResult<Value>>): Value {
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return must(step.value);
}

export function must<Value>(result: SignalResult<Value>): Value {
  if (!result.ok) throw new Error(`${result.code} at ${result.path}`);
  return result.value;
}
