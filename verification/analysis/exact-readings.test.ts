import { analysisToJson, type Case, type DrivelineJson, type Quantity, restore, serialise, toAnalysisInput } from "@halfturn/casefile";
import { analyseDriveline } from "@halfturn/engine/analysis";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { type Deviates, uniformDeviates } from "@halfturn/engine/uncertainty";
import { degreesToRadians, radians, radiansToDegrees, rpm, rpmToRadiansPerSecond } from "@halfturn/engine/units";
import { describe, expect, test } from "vitest";
import { perfectPlacing } from "../gauging/simulate-gauging.js";
import { SecondFormulation } from "../kinematics/second-formulation.js";
import type { Vector } from "../kinematics/vectors.js";
import { caseOf, SHAFT_RPM } from "./case-of.js";
import { readHeading, readSpot, type Spot, turnRoundCheck } from "./gauge-in-vehicle.js";
import { outOfFirstPlane, poseInResults, shaftInVehicle, shaftsOf, type TrueDriveline, trueMotion } from "./true-driveline.js";

/** Degrees: what sines, arc tangents and a small fit leave of exact readings. */
const ANGLE_DEG = 1e-9;
/** Relative, and degrees below which only rounding is left of an equivalent angle. */
const RELATIVE = 1e-6;
const NEAR_ZERO_DEG = 1e-5;
/** Degrees and plain numbers of the order of tan^2(b/2); accelerations are over squared speed. */
const NEAR_ZERO_SQUARE = 1e-9;
/** A case file asks for some step and some accuracy: a billionth of a degree, a millionth of a millimetre. */
const TINY = 1e-9;
/** Width that a billionth of a degree of the readings may leave, in degrees or relative; an angle that cancels to nothing feels their root. */
const INTERVAL_ROOM = 1e-3;
const DRAWS = 60;
const CASES = 300;

const degreesOf = (angle: number): number => radiansToDegrees(radians(angle));
const between = (uniform: Deviates, low: number, high: number): number => low + (high - low) * uniform();

/** 1 to 4 sections lying anyhow, or in one upright plane with yokes in line or a quarter turn apart, so that a sum of angles applies. */
function drawDriveline(uniform: Deviates): TrueDriveline {
  const runs = uniform() < 0.5 ? "forward" : "rearward";
  const sections = ["front", "middle", "back", "last"].slice(0, 1 + Math.floor(4 * uniform()));
  const planar = uniform() < 0.4;
  const aside = between(uniform, -3, 3);
  const directions = ["source", ...sections, "driven"].map(() =>
    shaftInVehicle(runs, degreesToRadians(between(uniform, -12, 12)), degreesToRadians(planar ? aside : between(uniform, -8, 8))),
  );
  // A shaft between parallel ends cancels, yokes in line.
  if (planar && sections.length === 1 && uniform() < 0.5) {
    const parallel = [directions[0], directions[1], directions[0]] as readonly Vector[];
    return { runs, sections, lengthsMm: [1200], directions: parallel, phasings: [0] };
  }
  const phasings = sections.map(() => (planar ? (Math.PI / 2) * Math.floor(2 * uniform()) : between(uniform, -Math.PI / 2, Math.PI / 2)));
  return { runs, sections, lengthsMm: sections.map(() => between(uniform, 600, 1800)), directions, phasings };
}

/** Every shaft from either side: flanges on a face or along, tubes at both ends, and some zeroed readings. */
function drawSpots(truth: TrueDriveline, uniform: Deviates): readonly Spot[] {
  const side = () => (uniform() < 0.5 ? ("left" as const) : ("right" as const));
  const shafts = shaftsOf(truth);
  const absolute = shafts.flatMap((shaft): Spot[] => {
    if (!truth.sections.includes(shaft)) return [{ kind: uniform() < 0.5 ? "face" : "along", at: shaft, side: side() }];
    return ["source-end", "driven-end"].map((end) => ({ kind: "along", at: `${shaft}:${end}`, side: side() }));
  });
  const zeroed = shafts
    .slice(1)
    .flatMap((to, k): Spot[] => (uniform() < 0.4 ? [{ kind: "between", from: shafts[k] as string, to, side: side() }] : []));
  return [...absolute, ...zeroed];
}

function drawCase(truth: TrueDriveline, uniform: Deviates): Case {
  const gauge = { zeroDeg: between(uniform, -0.6, 0.6), placing: perfectPlacing };
  const headings = shaftsOf(truth).map((shaft, s) => {
    const overMm = truth.lengthsMm[s - 1] ?? between(uniform, 200, 500);
    return readHeading(truth, shaft, uniform() < 0.5 ? "angle" : { overMm }, TINY);
  });
  const written = caseOf(
    truth,
    { resolutionDeg: TINY, accuracyDeg: TINY, zeroCheck: turnRoundCheck(between(uniform, -4, 4), gauge) },
    drawSpots(truth, uniform).map((spot) => readSpot(truth, spot, gauge)),
    headings,
  );
  const restored = restore(serialise(written));
  if (!restored.ok) throw new Error(JSON.stringify(restored.problems));
  return restored.case;
}

function analysed(document: Case): { readonly driveline: DrivelineJson; readonly warnings: readonly string[] } {
  const settings = { defaults: DEFAULT_LIMITS, draws: DRAWS, seed: 1 };
  const analysis = analyseDriveline(toAnalysisInput(document, { driveline: 0, gauging: 0 }, settings));
  const { drivelines, findings } = analysisToJson([{ analysis, stage: "as-found", gauging: 0 }], settings);
  // Through text, as a program that reads the result would see it.
  const [driveline] = JSON.parse(JSON.stringify(drivelines)) as readonly [DrivelineJson];
  const warnings = findings.filter(({ code, severity }) => code.startsWith("gauging.") && severity !== "note");
  return { driveline, warnings: warnings.map(({ code }) => code) };
}

function expectNear(quantity: Quantity, truth: number, absolute: number, relative = 0): void {
  expect(quantity).not.toBeNull();
  const { value, interval95 } = quantity as NonNullable<Quantity>;
  const allowed = Math.max(absolute, relative * Math.abs(truth));
  expect(Math.abs(value - truth)).toBeLessThanOrEqual(allowed);
  // Exact readings leave no room for anything else.
  for (const end of interval95) expect(Math.abs(end - truth)).toBeLessThanOrEqual(allowed + INTERVAL_ROOM * Math.max(1, Math.abs(truth)));
}

const uniform = uniformDeviates(415);
const CASES_DRAWN = Array.from({ length: CASES }, () => {
  const truth = drawDriveline(uniform);
  return { truth, document: drawCase(truth, uniform) };
});

describe("a case file of exact readings, taken from both sides with a gauge whose zero is off", () => {
  test("gives every shaft and joint as it lies in the vehicle", () => {
    for (const { truth, document } of CASES_DRAWN) {
      const { driveline, warnings } = analysed(document);
      expect(warnings).toEqual([]);
      truth.directions.forEach((direction, s) => {
        const { inclination, heading } = poseInResults(truth.runs, direction);
        expectNear(driveline.shafts[s]?.inclinationDeg ?? null, degreesOf(inclination), ANGLE_DEG);
        expectNear(driveline.shafts[s]?.headingDeg ?? null, degreesOf(heading), ANGLE_DEG);
      });
      trueMotion(truth).joints.forEach((angle, k) => {
        expectNear(driveline.joints[k]?.operatingAngleDeg ?? null, degreesOf(angle), ANGLE_DEG);
      });
    }
  });

  test("gives what the joints leave, and how unevenly every section turns", () => {
    const squared = rpmToRadiansPerSecond(rpm(SHAFT_RPM)) ** 2;
    for (const { truth, document } of CASES_DRAWN) {
      const { driveline } = analysed(document);
      const motion = trueMotion(truth);
      expectNear(driveline.cancellation.equivalentAngleDeg, degreesOf(motion.equivalent), NEAR_ZERO_DEG, RELATIVE);
      expectNear(driveline.motion.transmissionErrorPeakToPeakDeg, degreesOf(motion.peakToPeak), NEAR_ZERO_SQUARE, RELATIVE);
      const speed = driveline.motion.speeds.at(-1);
      expect(speed?.shaftRpm).toBe(SHAFT_RPM);
      const accelerations: readonly (readonly [Quantity, number])[] = [
        [speed?.drivenAccelerationRadS2 ?? null, motion.acceleration],
        [speed?.sourceAccelerationCoastRadS2 ?? null, motion.acceleration],
        ...motion.drive.map((each, s) => [speed?.drive[s]?.accelerationRadS2 ?? null, each] as const),
        ...motion.coast.map((each, s) => [speed?.coast[s]?.accelerationRadS2 ?? null, each] as const),
      ];
      for (const [quantity, each] of accelerations) expectNear(quantity, each * squared, NEAR_ZERO_SQUARE * squared, RELATIVE);
    }
  });

  test("gives the sum of angles where the shafts lie in one plane and the yokes in line or a quarter turn apart, and there alone", () => {
    const summed = CASES_DRAWN.filter(({ truth, document }) => {
      const { bench } = trueMotion(truth);
      const applies = bench !== null && outOfFirstPlane(truth.directions) < 1e-9;
      const { benchResidualDeg } = analysed(document).driveline.cancellation;
      if (!applies || bench === null) expect(benchResidualDeg).toBeNull();
      else expectNear(benchResidualDeg, degreesOf(bench), ANGLE_DEG);
      return applies;
    });
    expect(summed.length).toBeGreaterThan(CASES / 4);
  });

  test("names for each section the phasing that leaves least", () => {
    for (const { truth, document } of CASES_DRAWN) {
      for (const [section, deg] of Object.entries(analysed(document).driveline.cancellation.bestPhasingDeg)) {
        const place = truth.sections.indexOf(section);
        const left = (off: number): number => {
          const phasings = truth.phasings.map((phasing, s) => (s === place ? degreesToRadians(deg + off) : phasing));
          return new SecondFormulation(truth.directions, phasings).equivalentAngle;
        };
        const best = left(0);
        for (const off of [-90, -45, -1, 1, 45]) expect(best).toBeLessThanOrEqual(left(off) + degreesToRadians(NEAR_ZERO_DEG));
      }
    }
  });
});
