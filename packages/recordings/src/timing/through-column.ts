import type { Column } from "./long-column.js";

/** Numbers looked at between two turns for others: some milliseconds of work. */
const STRETCH = 262_144;
/** A little more than is looked back at. */
const BACK = 16;
const LOOKED_INTO = 65_536;

/** Visits column[from, to) in order, with each number's index. Yields between stretches. */
export function* throughColumn(column: Column, from: number, to: number, visit: (value: number, index: number) => void): Generator<void> {
  const held = new Float64Array(Math.max(0, Math.min(STRETCH, to - from)));
  for (let first = from; first < to; first += held.length) {
    const part = held.subarray(0, to - first);
    column.read(first, part);
    for (let k = 0; k < part.length; k++) visit(part[k] as number, first + k);
    yield;
  }
}

/** Looks single numbers of a column up, quickly where they are asked for from first to last. */
export function lookInto(column: Column): (index: number) => number {
  const held = new Float64Array(Math.min(LOOKED_INTO, column.length));
  let first = 0;
  let end = 0;
  return (index) => {
    if (index < first || index >= end) {
      first = Math.max(0, Math.min(index - BACK, column.length - held.length));
      column.read(first, held);
      end = first + held.length;
    }
    return held[index - first] as number;
  };
}
