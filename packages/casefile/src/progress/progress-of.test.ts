import { expect, test } from "vitest";
import type { Case } from "../schema/case.js";
import { progressOf } from "./progress-of.js";

type Gauging = NonNullable<Case["gauging"]>[number];
type Correction = NonNullable<Case["corrections"]>[number];

const gauged = (stage: Gauging["stage"]) => ({ stage }) as Gauging;
const correction = (state: Correction["state"]) => ({ state }) as Correction;

test("a new case has no step done", () => {
  expect(progressOf({})).toEqual({ gauged: false, corrected: false, proved: false });
  expect(progressOf({ gauging: [], corrections: [] })).toEqual({ gauged: false, corrected: false, proved: false });
});

test("each step counts once there is something in it", () => {
  expect(progressOf({ gauging: [gauged("as-found")] })).toEqual({ gauged: true, corrected: false, proved: false });
  expect(progressOf({ gauging: [gauged("as-found")], corrections: [correction("made")] })).toEqual({
    gauged: true,
    corrected: true,
    proved: false,
  });
  expect(progressOf({ gauging: [gauged("as-found"), gauged("after")] })).toEqual({ gauged: true, corrected: false, proved: true });
});

test("a correction that was chosen and not made does not count", () => {
  expect(progressOf({ corrections: [correction("chosen")] }).corrected).toBe(false);
});
