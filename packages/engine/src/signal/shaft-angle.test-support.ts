import type { SignalResult } from "./signal-fault.js";

/** The value of a result that must have one. */
export function must<Value>(result: SignalResult<Value>): Value {
  if (!result.ok) throw new Error(`${result.code} at ${result.path}`);
  return result.value;
}

/** Angle in rad of a shaft that starts at `hertz` turns per second and gains `rise` per second each second. */
export const sweptAngle = (hertz: number, rise: number) => (time: number) => 2 * Math.PI * (hertz * time + (rise * time ** 2) / 2);

/** Time at which it has turned so many turns. */
export const sweptTime = (hertz: number, rise: number) => (turns: number) =>
  (2 * turns) / (hertz + Math.sqrt(hertz ** 2 + 2 * rise * turns));
