import { fromSi, parseQuantity } from "@halfturn/engine/units";
import type { CliContext } from "../program/context.js";

const LEAST_KMH = 1;
const MOST_KMH = 300;

/** A road speed in km/h, typed with or without its unit. Throwing is how a flag's parser reports. */
export function parseRoadSpeed(this: CliContext, input: string): number {
  const read = parseQuantity(input, { kind: "speed", defaultUnit: "km/h" });
  if (read.ok) {
    // What was typed in km/h is kept to the last digit.
    const kmh = read.unit === "km/h" ? read.amount : fromSi(read.value, "km/h");
    if (kmh >= LEAST_KMH && kmh <= MOST_KMH) return kmh;
  }
  const { terminal, numbers } = this.words;
  throw new Error(terminal.usage.roadSpeed(numbers.plain(LEAST_KMH, 0), numbers.plain(MOST_KMH, 0)));
}
