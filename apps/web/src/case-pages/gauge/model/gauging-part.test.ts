import type { CaseGauging } from "@halfturn/casefile";
import { expect, test } from "vitest";
import { gaugingPart } from "./gauging-part.js";

const gauge: CaseGauging["gauge"] = { resolutionDeg: 0.1, accuracyDeg: 0.2 };
const before: CaseGauging = {
  driveline: "rear",
  stage: "as-found",
  state: { rideHeight: "normal", wheels: "on-ground" },
  gauge,
  readings: [],
};

test("each gauging has a place of its own for what is half typed, also where nobody noted when it was taken", () => {
  const gauging = [
    before,
    before,
    { ...before, stage: "after" },
    { ...before, takenAt: "2026-01-02" },
    { ...before, takenAt: "2026-01-03" },
  ] as const;
  const parts = gauging.map((_, k) => gaugingPart({ gauging }, k));
  expect(new Set(parts).size).toBe(gauging.length);
  // A later one leaves the places of those before it alone.
  expect(gauging.map((_, k) => gaugingPart({ gauging: [...gauging, before] }, k))).toEqual(parts);
});
