import type { DrivelineAnalysis, Estimate, Verdict } from "@halfturn/engine/analysis";
import { angleBetween, directionOf, type ShaftPose } from "@halfturn/engine/geometry";
import {
  bestPhasing,
  chainState,
  type Driveline,
  equivalentAngle,
  type JointKind,
  orderAmplitude,
  peakAccelerationCoefficient,
  reverse,
  transmissionErrorPeakToPeak,
  unevennessOf,
  wholeChain,
} from "@halfturn/engine/kinematics";
import { degreesToRadians, type Metres, type Radians, rpm, rpmToRadiansPerSecond } from "@halfturn/engine/units";
import type { DrivelinePicture } from "./driveline/driveline-picture.js";

export interface SampleShaft {
  readonly inclinationDeg: number | null;
  readonly headingDeg?: number;
}

export interface Sample {
  readonly kinds: readonly JointKind[];
  readonly shafts: readonly SampleShaft[];
  readonly lengthsM?: readonly number[];
  readonly phasingsDeg?: readonly (number | null)[];
  readonly names?: readonly string[];
  readonly jointIds?: readonly string[];
  readonly supports?: DrivelinePicture["supports"];
  readonly axle?: DrivelinePicture["axle"];
  readonly measured?: readonly number[];
  readonly runs?: DrivelinePicture["runs"];
  readonly withheld?: boolean;
  readonly maxRpm?: number;
}

const within = (value: number, relative: number, least: number): Estimate => {
  const half = Math.max(least, Math.abs(value) * relative);
  return { value, u: half / 2, low: value < half && value >= 0 ? 0 : value - half, high: value + half };
};
const ANGLE = degreesToRadians(0.17);
const signed = (value: number): Estimate => ({ value, u: ANGLE / 2, low: value - ANGLE, high: value + ANGLE });

/** A driveline with an analysis computed from its poses by the engine's kinematics; intervals are plain shares, good enough to draw. */
export function samplePicture(sample: Sample): DrivelinePicture {
  const sections = sample.kinds.slice(1).map((_, k) => {
    const phasing = sample.phasingsDeg?.[k] === undefined ? 0 : (sample.phasingsDeg[k] as number | null);
    const length = sample.lengthsM?.[k];
    return {
      id: `section-${k + 1}`,
      phasing: phasing === null ? null : degreesToRadians(phasing),
      phasingMeasured: phasing !== null,
      ...(length === undefined ? {} : { length: length as Metres }),
    };
  });
  const driveline: Driveline = {
    id: "rear",
    joints: sample.kinds.map((kind, k) => ({ id: sample.jointIds?.[k] ?? `J${k + 1}`, kind })),
    sections,
  };
  const ids = ["source", ...sections.map(({ id }) => id), "driven"];
  const names = sample.names ?? ["Transmission output", ...sections.map((_, k) => `Section ${k + 1}`), "Pinion"];
  return {
    driveline,
    analysis: analysisOf(driveline, ids, sample),
    runs: sample.runs ?? "rearward",
    names: {
      source: names[0] as string,
      driven: names[names.length - 1] as string,
      sections: Object.fromEntries(sections.map(({ id }, k) => [id, names[k + 1] as string])),
    },
    supports: sample.supports ?? [],
    axle: sample.axle ?? null,
    measuredHeadings: (sample.measured ?? sample.shafts.map((_, k) => k)).map((k) => ids[k] as string),
  };
}

function verdictOf(angle: Estimate, low: number, high: number): Verdict {
  if (angle.low > high) return "over";
  if (angle.high < low) return "under";
  return angle.low >= low && angle.high <= high ? "within" : "uncertain";
}

function analysisOf(driveline: Driveline, ids: readonly string[], { shafts, withheld = false, maxRpm = 3000 }: Sample): DrivelineAnalysis {
  const poses: ShaftPose[] = shafts.map(({ inclinationDeg, headingDeg }) => ({
    inclination: degreesToRadians(inclinationDeg ?? 0),
    heading: degreesToRadians(headingDeg ?? 0),
  }));
  const gauged = shafts.map(({ inclinationDeg }) => inclinationDeg !== null);
  const all = gauged.every(Boolean);
  const state = chainState(driveline, poses);
  const phased = driveline.sections.every(({ phasing }) => phasing !== null);
  const uneven = unevennessOf(wholeChain(state));
  const whole = all && phased;
  const coefficient = (unevenness: number | null): Estimate | null =>
    unevenness === null ? null : within(peakAccelerationCoefficient(unevenness), 0.15, 1e-5);
  const drive = driveline.sections.map((_, k) => coefficient(whole ? unevennessOf(state.fromSource[k] as never) : null));
  const coast = driveline.sections.map((_, k) => coefficient(whole ? unevennessOf(reverse(state.toDriven[k + 1] as never)) : null));
  const driven = coefficient(whole ? uneven : null);
  const at = (estimate: Estimate | null, speed: number): Estimate | null => {
    const square = rpmToRadiansPerSecond(rpm(speed)) ** 2;
    return estimate && { value: estimate.value * square, u: estimate.u * square, low: estimate.low * square, high: estimate.high * square };
  };
  const speeds = [...Array.from({ length: Math.ceil(maxRpm / 500) - 1 }, (_, k) => 500 * (k + 1)), maxRpm];
  const section = (k: number): string => driveline.sections[k]?.id ?? "";
  return {
    drivelineId: driveline.id,
    shafts: poses.map(({ inclination, heading }, k) => ({
      id: ids[k] as string,
      inclination: gauged[k] ? signed(inclination) : null,
      heading: signed(heading),
    })),
    joints: driveline.joints.map(({ id }, k) => {
      const known = gauged[k] && gauged[k + 1];
      const angle = known
        ? within(angleBetween(directionOf(poses[k] as ShaftPose), directionOf(poses[k + 1] as ShaftPose)), 0, ANGLE)
        : null;
      const [minimum, maximum] = [degreesToRadians(0.5), degreesToRadians(5.8)];
      return {
        id,
        operatingAngle: angle,
        minimum,
        maximum,
        verdict: withheld ? "withheld" : angle ? verdictOf(angle, minimum, maximum) : "not-gauged",
      };
    }),
    cancellation: {
      equivalentAngle: whole ? within(equivalentAngle(uneven), 0.1, ANGLE) : null,
      equivalentMaximum: degreesToRadians(3),
      verdict: "uncertain",
      benchResidual: null,
      benchVerdict: null,
      bestPhasing: all ? (Object.fromEntries(bestPhasing(driveline, poses)) as Record<string, Radians>) : {},
    },
    motion: {
      transmissionErrorPeakToPeak: whole ? within(transmissionErrorPeakToPeak(uneven), 0.2, 1e-5) : null,
      secondOrder: whole ? within(orderAmplitude(uneven, 1), 0.2, 1e-5) : null,
      fourthOrder: whole ? within(orderAmplitude(uneven, 2), 0.2, 1e-8) : null,
      coefficients: { driven, sourceCoast: driven, drive, coast },
      speeds: speeds.map((speed) => ({
        shaftSpeed: rpm(speed),
        drivenAcceleration: at(driven, speed),
        sourceAccelerationCoast: at(driven, speed),
        drive: drive.map((estimate, k) => ({ section: section(k), acceleration: at(estimate, speed) })),
        coast: coast.map((estimate, k) => ({ section: section(k), acceleration: at(estimate, speed) })),
      })),
      verdict: "within",
    },
    sensitivity: [],
    withheld,
    findings: [],
  };
}

/** A two-piece rear driveline that is nearly right. */
export const TWO_PIECE: Sample = {
  kinds: ["cross", "cross", "cross"],
  shafts: [
    { inclinationDeg: 3.1, headingDeg: 0 },
    { inclinationDeg: 4.6, headingDeg: 0.4 },
    { inclinationDeg: 7.7, headingDeg: -0.9 },
    { inclinationDeg: 2.2, headingDeg: 0 },
  ],
  lengthsM: [1.18, 1.42],
  phasingsDeg: [90, 0],
  names: ["Transmission output", "Front section", "Back section", "Pinion"],
  supports: [{ joint: "J2", bearingIs: "source-side", bearingToJoint: 0.12 as Metres }],
  axle: { centreToJoint: 0.33 as Metres, jointAboveCentre: 0 as Metres },
  measured: [0, 1, 3],
};

/** A short front shaft with every kind of joint but no lengths. */
const MIXED: Sample = {
  kinds: ["double-cross", "ball", "flexible", "cross"],
  shafts: [
    { inclinationDeg: 2.0, headingDeg: 0 },
    { inclinationDeg: 4.4, headingDeg: 1.5 },
    { inclinationDeg: 6.1, headingDeg: -1 },
    { inclinationDeg: null, headingDeg: 0 },
    { inclinationDeg: -3.3, headingDeg: 0 },
  ],
  phasingsDeg: [0, null, 30],
  names: ["Transfer case output", "Front section", "Middle section with a long name", "Back section", "Front axle pinion"],
  runs: "forward",
  measured: [0, 1, 4],
};

const SIX: Sample = {
  kinds: ["cross", "cross", "cross", "cross", "cross", "cross"],
  shafts: [1.2, 2.5, 4, 3.1, 5.5, 2.2, 1].map((inclinationDeg, k) => ({ inclinationDeg, headingDeg: (k % 3) - 1 })),
  lengthsM: [0.9, 0.35, 1.4, 0.12, 1.6],
  phasingsDeg: [90, 20, -45, 0, 0],
  supports: [
    { joint: "J2", bearingIs: "source-side", bearingToJoint: 0.1 as Metres },
    { joint: "J3", bearingIs: "driven-side", bearingToJoint: null },
    { joint: "J4", bearingIs: "source-side", bearingToJoint: 0.1 as Metres },
  ],
};

/** In one plane, yokes in line: arrows along one line. */
const PLANAR: Sample = {
  kinds: ["cross", "cross", "cross"],
  shafts: [{ inclinationDeg: 1 }, { inclinationDeg: 4 }, { inclinationDeg: 9 }, { inclinationDeg: 13 }],
  lengthsM: [0.9, 1.1],
  phasingsDeg: [0, 0],
};

const ONE: Sample = { kinds: ["cross"], shafts: [{ inclinationDeg: 16 }, { inclinationDeg: 2 }], withheld: true };

export const SAMPLES: Readonly<Record<string, Sample>> = { "two-piece": TWO_PIECE, mixed: MIXED, six: SIX, planar: PLANAR, one: ONE };
