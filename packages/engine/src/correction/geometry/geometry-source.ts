import { shaftIds } from "../../kinematics/index.js";
import { type Adjuster, type CorrectionDriveline, type CorrectionInput, chainSign, type VehicleState } from "../model/index.js";
import { guideRateUncertainty } from "./guide-move.js";
import type { Quantities } from "./record.js";
import { padLengthOf, USUAL_PAD_SHARE } from "./wedge-shift.js";

/** One independent source of error of the geometry, and what it does to the quantities of every driveline. */
export interface GeometrySource {
  /** In ids: a pose source's own name, `length:SECTION`, `bearing:JOINT`, `centre-to-joint`, `pitch:STATE` and so on. */
  readonly of: string;
  readonly path: string;
  /** gauge: from the readings. tape: a length taken or to be taken. stated: an axle angle or rate that somebody gave. */
  readonly origin: "gauge" | "tape" | "stated";
  readonly shape: "rectangular" | "normal";
  readonly u: number;
  /** The truth scatters about the value, not the value about the truth: nobody measured it. */
  readonly assumed: boolean;
  readonly apply: (all: readonly Quantities[], error: number) => void;
}

/** Half width of the place of a first joint that nobody measured against the first driveline's, metres: common practice, no source. */
const FIRST_JOINT_HALF_WIDTH = 0.4;

const half = (width: number): number => width / Math.sqrt(3);

/** All sources, drivelines in order, each in a fixed order: the draws depend on it. */
export const geometrySources = (input: CorrectionInput, states: readonly VehicleState[]): readonly GeometrySource[] => [
  ...input.drivelines.flatMap((on, d) => [...poseSources(on, d), ...tapeSources(on, d, input), ...axleSources(on, d, input, states)]),
  ...powertrainSources(input),
];

function poseSources({ driveline, poses }: CorrectionDriveline, d: number): readonly GeometrySource[] {
  const rows = shaftIds(driveline).map((id) => poses.shafts.indexOf(id));
  return poses.sources.map((source, k) => {
    const inclinationBy = rows.map((row) => poses.inclinationBy[row]?.[k] ?? 0);
    const headingBy = rows.map((row) => poses.headingBy[row]?.[k] ?? 0);
    return {
      of: source.of,
      path: source.path,
      origin: "gauge",
      shape: source.shape,
      u: source.u,
      assumed: source.origin === "assumed",
      apply: (all, error) => {
        const { inclination, heading } = all[d] as Quantities;
        for (let s = 0; s < inclinationBy.length; s++) {
          inclination[s] = (inclination[s] as number) + (inclinationBy[s] as number) * error;
          heading[s] = (heading[s] as number) + (headingBy[s] as number) * error;
        }
      },
    };
  });
}

function tapeSources(
  { driveline, supports, axle, path }: CorrectionDriveline,
  d: number,
  { accuracy }: CorrectionInput,
): readonly GeometrySource[] {
  const tape = (of: string, place: string, apply: (q: Quantities, error: number) => void): GeometrySource => ({
    of,
    path: `${path}.${place}`,
    origin: "tape",
    shape: "rectangular",
    u: half(accuracy.tape),
    assumed: false,
    apply: (all, error) => apply(all[d] as Quantities, error),
  });
  const lengths = driveline.sections.flatMap(({ id, length }, k) =>
    length === undefined
      ? []
      : [
          tape(`length:${id}`, `sections[${k}].length`, (q, e) => {
            q.length[k] = (q.length[k] as number) + e;
          }),
        ],
  );
  const bearings = driveline.joints.flatMap(({ id }, j) =>
    supports.some(({ jointId, bearingToJoint }) => jointId === id && bearingToJoint)
      ? [
          tape(`bearing:${id}`, `joints[${j}].support.bearingToJoint`, (q, e) => {
            q.bearing[j] = (q.bearing[j] as number) + e;
          }),
        ]
      : [],
  );
  const arms =
    axle?.centreToJoint == null
      ? []
      : [
          tape("centre-to-joint", "axle.centreToJoint", (q, e) => {
            q.arm += e;
          }),
          tape("joint-above-centre", "axle.jointAboveCentre", (q, e) => {
            q.above += e;
          }),
        ];
  return [...lengths, ...bearings, ...arms];
}

function axleSources(
  on: CorrectionDriveline,
  d: number,
  input: CorrectionInput,
  states: readonly VehicleState[],
): readonly GeometrySource[] {
  const { driveline, axle, path } = on;
  const id = driveline.id;
  const source = (
    of: string,
    place: string,
    origin: "tape" | "stated",
    u: number,
    apply: (q: Quantities, error: number) => void,
  ): GeometrySource => ({
    of,
    path: place,
    origin,
    shape: "rectangular",
    u,
    assumed: origin === "stated",
    apply: (all, error) => apply(all[d] as Quantities, error),
  });
  const addTo = (chosen: readonly number[]) => (q: Quantities, e: number) => {
    for (const s of chosen) q.stateError[s] = (q.stateError[s] as number) + e;
  };
  const where = (test: (state: VehicleState) => boolean): readonly number[] =>
    states.flatMap((state, s) => ((state.drivelineId === null || state.drivelineId === id) && test(state) ? [s] : []));

  const pitches = where((state) => state.pinionPitch !== null && (state.pinionPitch !== 0 || state.axleTravel !== 0)).map((s) =>
    source(`pitch:${(states[s] as VehicleState).id}`, `states[${s}]`, "stated", half(input.accuracy.pitch), addTo([s])),
  );
  const windUps = (["drive-torque", "coast-torque"] as const).flatMap((load) => {
    const chosen = where((state) => state.load === load);
    return axle?.windUp && chosen.length > 0
      ? [source(`wind-up:${load}`, `${path}.axle.windUp`, "stated", half(input.accuracy.pitch), addTo(chosen))]
      : [];
  });
  const rate = guideRateUncertainty(axle?.guide ?? null, on.runs, input.accuracy.tape);
  const guides =
    rate > 0
      ? [
          source("axle-guide", `${path}.axle`, "tape", rate, (q, e) => {
            q.guideError += e;
          }),
        ]
      : [];
  const pads = input.adjusters.flatMap((adjuster) =>
    adjuster.kind === "axle-wedge" && adjuster.drivelineId === id
      ? [
          source("pad", adjuster.path, "tape", padShare(adjuster, input), (q, e) => {
            q.padError += e;
          }),
        ]
      : [],
  );
  return [...pitches, ...windUps, ...guides, ...pads];
}

const padShare = (wedge: Extract<Adjuster, { kind: "axle-wedge" }>, { accuracy }: CorrectionInput): number =>
  half(wedge.padLength === null ? USUAL_PAD_SHARE : accuracy.tape / padLengthOf(wedge));

function powertrainSources({ powertrain, drivelines, accuracy, adjusters }: CorrectionInput): readonly GeometrySource[] {
  if (!powertrain || !adjusters.some(({ kind }) => kind === "mount-spacer")) return [];
  const places: readonly { of: string; forward: boolean; pivot: number; mount: number }[] = [
    { of: "pivot-forward", forward: true, pivot: 1, mount: -1 },
    { of: "pivot-up", forward: false, pivot: 1, mount: -1 },
    { of: "mount-forward", forward: true, pivot: 0, mount: 1 },
    { of: "mount-up", forward: false, pivot: 0, mount: 1 },
  ];
  const own = places.map(
    ({ of, forward, pivot, mount }): GeometrySource => ({
      of,
      path: "vehicle.powertrain",
      origin: "tape",
      shape: "rectangular",
      u: half(accuracy.tape),
      assumed: false,
      apply: (all, error) =>
        all.forEach((q, d) => {
          const signed = forward ? chainSign((drivelines[d] as CorrectionDriveline).runs) * error : error;
          const axis = forward ? 0 : 1;
          q.powertrain[axis] = (q.powertrain[axis] as number) + pivot * signed;
          q.powertrain[2 + axis] = (q.powertrain[2 + axis] as number) + mount * signed;
        }),
    }),
  );
  const joints = drivelines.flatMap(({ firstJoint, path }, d): readonly GeometrySource[] => {
    const width = firstJoint ? accuracy.tape : FIRST_JOINT_HALF_WIDTH;
    const apply = (all: readonly Quantities[], error: number): void => {
      (all[d] as Quantities).powertrain[0] += error;
    };
    return d === 0
      ? []
      : [{ of: "first-joint", path, origin: "tape", shape: "rectangular", u: half(width), assumed: firstJoint === null, apply }];
  });
  return [...own, ...joints];
}
