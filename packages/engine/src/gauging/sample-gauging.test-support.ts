import type { Driveline } from "../kinematics/driveline.js";
import { degreesToRadians, type Radians, radiansToDegrees } from "../units/index.js";
import type { AbsoluteReading, DifferenceReading, Gauging, HeadingReading, Reading } from "./gauging.js";
import type { PoseModel } from "./pose-model.js";

/** A driveline of cross joints with the sections named. */
export const drivelineWith = (...sections: readonly string[]): Driveline => ({
  id: "rear",
  joints: [...sections, "last"].map((_, k) => ({ id: `J${k + 1}`, kind: "cross" })),
  sections: sections.map((id) => ({ id, phasing: 0 as Radians, phasingMeasured: true })),
});

type Unplaced<R> = Omit<R, "path">;

export const absolute = (shaft: string, place: AbsoluteReading["place"], deg: number, zeroSign: 1 | -1 = 1): Unplaced<AbsoluteReading> => ({
  kind: "absolute",
  shaft,
  place,
  inclination: degreesToRadians(deg),
  zeroSign,
});

export const difference = (from: string, to: string, deg: number): Unplaced<DifferenceReading> => ({
  kind: "difference",
  from,
  to,
  inclination: degreesToRadians(deg),
  zeroSign: 1,
});

export interface GaugingSetup {
  readonly zeroCheckDeg?: readonly number[];
  readonly resolutionDeg?: number;
  readonly accuracyDeg?: number;
  readonly common?: boolean;
  readonly headings?: readonly HeadingReading[];
  readonly state?: Partial<Pick<Gauging, "rideHeight" | "wheels">>;
}

/** A gauging with a 0.1 deg gauge at ride height, wheels on the ground, unless told otherwise. */
export function gaugingWith(readings: readonly Unplaced<Reading>[], setup: GaugingSetup = {}): Gauging {
  const { zeroCheckDeg = [], resolutionDeg = 0.1, accuracyDeg = 0.1, common = false, headings = [], state = {} } = setup;
  return {
    rideHeight: "normal",
    wheels: "on-ground",
    ...state,
    gauge: {
      resolution: degreesToRadians(resolutionDeg),
      accuracy: degreesToRadians(accuracyDeg),
      common,
      zeroCheck: zeroCheckDeg.map((deg, k) => ({ value: degreesToRadians(deg), path: `gauging[0].gauge.zeroCheck[${k}]` })),
    },
    readings: readings.map((reading, k) => ({ ...reading, path: `gauging[0].readings[${k}]` }) as Reading),
    headings,
    path: "gauging[0]",
  };
}

export const inclinationsDeg = (model: PoseModel): readonly (number | null)[] =>
  model.inclination.map((value) => (value === null ? null : radiansToDegrees(value)));

/** Standard uncertainty of each inclination, in radians. */
export const inclinationU = (model: PoseModel): readonly number[] =>
  model.inclinationBy.map((row) => Math.hypot(...row.map((by, k) => by * (model.sources[k]?.u ?? 0))));

export const codesOf = ({ findings }: PoseModel): readonly string[] => findings.map(({ code }) => code);

export const findingOf = ({ findings }: PoseModel, code: string) => findings.find((finding) => finding.code === code);
