import type { ErrorSource, PoseModel } from "../gauging/index.js";
import { type Driveline, type JointKind, shaftIds } from "../kinematics/index.js";
import { DEFAULT_LIMITS } from "../limits/index.js";
import { degreesToRadians, type Metres, metres, type Radians, rpm } from "../units/index.js";
import {
  type Adjuster,
  type Axle,
  type CorrectionDriveline,
  type CorrectionInput,
  DEFAULT_ACCURACY,
  type Runs,
  type Stock,
  type VehicleState,
} from "./model/index.js";

export const deg = degreesToRadians;
export const mm = (value: number): Metres => metres(value / 1000);

/** Poses with one independent error a shaft: `u` degrees of inclination, `uHeading` degrees of heading. */
export function poseModel(
  driveline: Driveline,
  inclinationDeg: readonly number[],
  { headingDeg = [], uDeg = 0.08, uHeadingDeg = 0 }: { headingDeg?: readonly number[]; uDeg?: number; uHeadingDeg?: number } = {},
): PoseModel {
  const shafts = shaftIds(driveline);
  const source = (of: string, u: number): ErrorSource => ({ path: `readings.${of}`, of, shape: "rectangular", u, origin: "measured" });
  const sources = [...shafts.map((id) => source(id, deg(uDeg))), ...shafts.map((id) => source(`heading:${id}`, deg(uHeadingDeg)))];
  const row = (at: number): number[] => sources.map((_, k) => (k === at ? 1 : 0));
  return {
    shafts,
    inclination: inclinationDeg.map(deg),
    heading: shafts.map((_, s) => deg(headingDeg[s] ?? 0)),
    sources,
    inclinationBy: shafts.map((_, s) => row(s)),
    headingBy: shafts.map((_, s) => row(shafts.length + s)),
    findings: [],
  };
}

export const chain = (
  lengthsMm: readonly (number | undefined)[],
  phasingsDeg: readonly number[],
  id = "rear",
  kind: JointKind = "cross",
): Driveline => ({
  id,
  joints: Array.from({ length: lengthsMm.length + 1 }, (_, k) => ({ id: `J${k + 1}`, kind })),
  sections: lengthsMm.map((length, k) => ({
    id: `s${k + 1}`,
    phasing: deg(phasingsDeg[k] ?? 0),
    phasingMeasured: true,
    ...(length === undefined ? {} : { length: mm(length) }),
  })),
});

export const axle = (over: Partial<Axle> = {}): Axle => ({
  centreToJoint: mm(330),
  jointAboveCentre: mm(0),
  springPosition: "above-axle",
  padInclination: 0 as Radians,
  steered: false,
  caster: null,
  windUp: null,
  guide: null,
  ...over,
});

export function drivelineCase(driveline: Driveline, poses: PoseModel, over: Partial<CorrectionDriveline> = {}): CorrectionDriveline {
  return {
    driveline,
    runs: "rearward" satisfies Runs,
    poses,
    supports: [],
    slips: [],
    axle: axle(),
    firstJoint: { forward: mm(0), left: mm(0), up: mm(0) },
    limits: DEFAULT_LIMITS,
    maxShaftSpeed: rpm(3000),
    refused: false,
    path: "drivelines[0]",
    ...over,
  };
}

/** Two sections with a bearing 120 mm before the middle joint; the back one slips. */
export const twoPiece = (
  inclinationDeg: readonly number[] = [4, 3, 4.5, 1.5],
  over: Partial<CorrectionDriveline> = {},
): CorrectionDriveline => {
  const driveline = chain([1180, 1240], [90, 0]);
  return drivelineCase(driveline, poseModel(driveline, inclinationDeg, { uHeadingDeg: 0.1 }), {
    supports: [{ jointId: "J2", bearingToJoint: mm(120), bearingIs: "source-side", mounted: "below-crossmember" }],
    slips: [{ sectionId: "s2", engaged: mm(70), minimumEngaged: mm(45), inwardTravel: mm(30) }],
    ...over,
  });
};

const common = (id: string, k: number, stock: Stock, labour: number) => ({ id, labour, parts: 0, stock, path: `adjusters[${k}]` });

export const wedge = (id: string, stock: Stock, { driveline = "rear", labour = 2, fittedDeg = 0 } = {}): Adjuster => ({
  kind: "axle-wedge",
  ...common(id, 0, stock, labour),
  drivelineId: driveline,
  fitted: deg(fittedDeg),
  padLength: mm(100),
  thinEdge: mm(2),
});

export const supportDrop = (id: string, stock: Stock, { driveline = "rear", labour = 1, joint = "J2", fittedMm = 0 } = {}): Adjuster => ({
  kind: "support-drop",
  ...common(id, 1, stock, labour),
  drivelineId: driveline,
  jointId: joint,
  fitted: mm(fittedMm),
});

export const supportShift = (id: string, stock: Stock, { driveline = "rear", labour = 1, joint = "J2" } = {}): Adjuster => ({
  kind: "support-shift",
  ...common(id, 1, stock, labour),
  drivelineId: driveline,
  jointId: joint,
  fitted: mm(0),
});

export const mountSpacer = (id: string, stock: Stock, { labour = 1.5, fittedMm = 0 } = {}): Adjuster => ({
  kind: "mount-spacer",
  ...common(id, 2, stock, labour),
  fitted: mm(fittedMm),
});

export const rangeDeg = (minimum: number, maximum: number, step: number): Stock => ({
  kind: "range",
  minimum: deg(minimum),
  maximum: deg(maximum),
  step: deg(step),
});
export const rangeMm = (minimum: number, maximum: number, step: number): Stock => ({
  kind: "range",
  minimum: minimum / 1000,
  maximum: maximum / 1000,
  step: step / 1000,
});

export const powertrain = { pivotForward: mm(1350), pivotUp: mm(-60), mountForward: mm(250), mountUp: mm(-180) };

export const state = (id: string, over: Partial<VehicleState> = {}): VehicleState => ({
  id,
  drivelineId: null,
  axleTravel: mm(0),
  pinionPitch: null,
  load: "none",
  ...over,
});

export const correctionCase = (
  drivelines: readonly CorrectionDriveline[],
  adjusters: readonly Adjuster[],
  over: Partial<CorrectionInput> = {},
): CorrectionInput => ({
  drivelines,
  powertrain,
  adjusters,
  states: [],
  accuracy: DEFAULT_ACCURACY,
  draws: 2000,
  seed: 1,
  ...over,
});
