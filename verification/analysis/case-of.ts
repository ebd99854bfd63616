import type { Case, CaseGauge, CaseHeading, CaseReading } from "@halfturn/casefile";
import { radians, radiansToDegrees } from "@halfturn/engine/units";
import type { TrueDriveline } from "./true-driveline.js";

/** The highest shaft speed of the simulated vehicles. */
export const SHAFT_RPM = 3000;

/** A case file of one driveline, gauged once. */
export const caseOf = (
  truth: TrueDriveline,
  gauge: CaseGauge,
  readings: readonly CaseReading[],
  headings: readonly CaseHeading[],
): Case => ({
  format: "halfturn-case",
  version: 1,
  id: "simulated",
  title: "Simulated vehicle",
  createdAt: "2026-03-02T08:00:00Z",
  vehicle: { label: "Simulated vehicle", maxShaftSpeedRpm: SHAFT_RPM },
  drivelines: [
    {
      id: "line",
      runs: truth.runs,
      source: { label: "Source" },
      sections: truth.sections.map((id, s) => ({
        id,
        lengthMm: truth.lengthsMm[s] as number,
        phasingDeg: radiansToDegrees(radians(truth.phasings[s] as number)),
        phasingMeasured: true,
      })),
      driven: { label: "Driven" },
      joints: truth.directions.slice(1).map((_, k) => ({ id: `J${k + 1}`, kind: "cross" as const })),
    },
  ],
  gauging: [
    {
      driveline: "line",
      stage: "as-found",
      state: { rideHeight: "normal", wheels: "on-ground" },
      gauge,
      readings: [...readings],
      headings: [...headings],
    },
  ],
});
