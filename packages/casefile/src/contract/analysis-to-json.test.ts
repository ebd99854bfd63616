import type { DrivelineAnalysis, Estimate } from "@halfturn/engine/analysis";
import { degreesToRadians, radiansToDegrees, rpm } from "@halfturn/engine/units";
import { expect, test } from "vitest";
import { analysisToJson } from "./analysis-to-json.js";

const plain = (value: number): Estimate => ({ value, u: 1, low: value - 2, high: value + 2 });
const angle = (value: number): Estimate => ({
  value: degreesToRadians(value),
  u: degreesToRadians(0.1),
  low: degreesToRadians(value - 0.2),
  high: degreesToRadians(value + 0.2),
});
/** The same angle as it comes back: through the engine's own units and no other rounding. */
const back = (value: number): number => radiansToDegrees(degreesToRadians(value));
const q = (value: number) => ({ value: back(value), u: back(0.1), interval95: [back(value - 0.2), back(value + 0.2)] });
const plainQ = (value: number) => ({ value, u: 1, interval95: [value - 2, value + 2] });

const noSpeed = { code: "vehicle.no-maximum-speed", severity: "note", path: "vehicle", params: {} } as const;
const under = { code: "joint.under", severity: "warn", path: "drivelines[0].joints[0]", params: { angleDeg: 0.2 } } as const;

const analysis: DrivelineAnalysis = {
  drivelineId: "rear",
  shafts: [
    { id: "source", inclination: angle(2.4), heading: angle(-0.5) },
    { id: "driven", inclination: null, heading: null },
  ],
  joints: [{ id: "J1", operatingAngle: angle(3.2), maximum: degreesToRadians(5.7), minimum: degreesToRadians(0.5), verdict: "within" }],
  cancellation: {
    equivalentAngle: angle(1.2),
    equivalentMaximum: degreesToRadians(3),
    verdict: "within",
    benchResidual: null,
    benchVerdict: null,
    bestPhasing: { front: degreesToRadians(90) },
  },
  motion: {
    transmissionErrorPeakToPeak: angle(0.01),
    secondOrder: angle(0.005),
    fourthOrder: null,
    coefficients: { driven: null, sourceCoast: null, drive: [], coast: [] },
    speeds: [
      {
        shaftSpeed: rpm(500),
        drivenAcceleration: plain(12),
        sourceAccelerationCoast: null,
        drive: [{ section: "front", acceleration: plain(30) }],
        coast: [{ section: "front", acceleration: null }],
      },
    ],
    verdict: "uncertain",
  },
  sensitivity: [{ path: "gauging[0].readings[0]", of: "source", share: 0.6 }],
  withheld: false,
  findings: [under, noSpeed],
};

test("the printed contract, key by key and in order", () => {
  const json = analysisToJson([{ analysis, stage: "as-found", gauging: 0 }], { seed: 7 });
  const expected = {
    format: "halfturn-analysis",
    version: 1,
    seed: 7,
    drivelines: [
      {
        id: "rear",
        stage: "as-found",
        gauging: 0,
        shafts: [
          { id: "source", inclinationDeg: q(2.4), headingDeg: q(-0.5) },
          { id: "driven", inclinationDeg: null, headingDeg: null },
        ],
        joints: [{ id: "J1", operatingAngleDeg: q(3.2), maximumDeg: back(5.7), minimumDeg: back(0.5), verdict: "within" }],
        cancellation: {
          equivalentAngleDeg: q(1.2),
          equivalentMaximumDeg: back(3),
          verdict: "within",
          benchResidualDeg: null,
          benchVerdict: null,
          bestPhasingDeg: { front: 90 },
        },
        motion: {
          transmissionErrorPeakToPeakDeg: q(0.01),
          secondOrderDeg: q(0.005),
          fourthOrderDeg: null,
          speeds: [
            {
              shaftRpm: 500,
              drivenAccelerationRadS2: plainQ(12),
              sourceAccelerationCoastRadS2: null,
              drive: [{ section: "front", accelerationRadS2: plainQ(30) }],
              coast: [{ section: "front", accelerationRadS2: null }],
            },
          ],
          verdict: "uncertain",
        },
        sensitivity: [{ path: "gauging[0].readings[0]", of: "source", share: 0.6 }],
      },
    ],
    findings: [under, noSpeed],
  };
  // As text, because the order of keys is part of what is printed.
  expect(JSON.stringify(json, null, 2)).toBe(JSON.stringify(expected, null, 2));
});

test("findings of all drivelines stand together, what concerns the vehicle once", () => {
  const front: DrivelineAnalysis = { ...analysis, drivelineId: "front", findings: [noSpeed] };
  const json = analysisToJson(
    [
      { analysis, stage: "as-found", gauging: 0 },
      { analysis: front, stage: null, gauging: null },
    ],
    { seed: 1 },
  );
  expect(json.findings).toEqual([under, noSpeed]);
  expect(json.drivelines.map(({ id, stage, gauging }) => [id, stage, gauging])).toEqual([
    ["rear", "as-found", 0],
    ["front", null, null],
  ]);
});
