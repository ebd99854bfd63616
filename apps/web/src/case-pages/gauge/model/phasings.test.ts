import type { CaseGauging } from "@halfturn/casefile";
import { expect, test } from "vitest";
import { gaugedTwoPiece } from "./gauged-case.test-support.js";
import { withGauging } from "./keep-reading.js";
import { areAllSeen, phasingNamed, withPhasing } from "./phasings.js";

const GAUGING: CaseGauging = {
  driveline: "rear",
  stage: "after",
  state: { rideHeight: "normal", wheels: "on-ground" },
  gauge: { resolutionDeg: 0.1, accuracyDeg: 0.1 },
  readings: [],
};

test("half a turn makes no difference to how yokes stand", () => {
  expect([0, 180, -180, 360].map(phasingNamed)).toEqual(["in-line", "in-line", "in-line", "in-line"]);
  expect([90, -90, 270].map(phasingNamed)).toEqual(["quarter-turn", "quarter-turn", "quarter-turn"]);
  expect([22.5, 1, -45].map(phasingNamed)).toEqual(["other", "other", "other"]);
});

test("a phasing is noted, changed in place of the first, and taken away without a trace", () => {
  const one = withPhasing(GAUGING, "front", 90);
  expect(one.phasings).toEqual([{ section: "front", phasingDeg: 90 }]);
  const two = withPhasing(withPhasing(one, "back", 0), "front", 45);
  expect(two.phasings).toEqual([
    { section: "back", phasingDeg: 0 },
    { section: "front", phasingDeg: 45 },
  ]);
  expect(withPhasing(one, "front", null)).toEqual(GAUGING);
});

test("sections of a new case are unseen until each was looked at", () => {
  const document = gaugedTwoPiece();
  const [driveline] = document.drivelines;
  if (!driveline) throw new Error("no driveline");
  const one = withGauging(document, 0, (gauging) => withPhasing(gauging, "front", 0));
  const both = withGauging(one, 0, (gauging) => withPhasing(gauging, "back", 0));
  expect([document, one, both].map((of) => areAllSeen(of, driveline, 0))).toEqual([false, false, true]);
});
