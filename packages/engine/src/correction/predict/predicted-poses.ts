import type { ErrorSource, PoseModel } from "../../gauging/index.js";
import { poseOf, vec3 } from "../../geometry/index.js";
import { shaftIds } from "../../kinematics/index.js";
import type { Radians } from "../../units/index.js";
import type { CorrectionModel, DrivelineModel } from "../geometry/correction-model.js";
import { bestRecords, nudgedRecords } from "../geometry/draw-records.js";
import { newPlacement, PLACED, type PlacementCode, placeShafts } from "../geometry/place-shafts.js";
import { newMoves, writeMoves } from "../geometry/write-moves.js";

/** One driveline in one state after the changes, with the linear error law of gauge, tape and stated angles. */
export interface PredictedPoses {
  readonly code: PlacementCode;
  readonly poses: PoseModel;
  /** Slip travel in metres, + = pulled out, and what each source of `poses` does to it for one of its units. */
  readonly slip: number;
  readonly slipBy: readonly number[];
}

interface Placed {
  readonly inclination: readonly number[];
  readonly heading: readonly number[];
  readonly slip: number;
}

/**
 * Poses of every driveline in every state, [driveline][state]. The law is the central difference over one standard uncertainty of each source: the
 * placement bends so little over an error that a Monte Carlo over the law and one over the placement itself cannot be told apart (tested).
 */
export function predictedPoses(model: CorrectionModel, amounts: ArrayLike<number>): readonly (readonly PredictedPoses[])[] {
  const moves = newMoves(model);
  writeMoves(model, amounts, moves);
  const best = bestRecords(model);
  const nudges = model.sources.map((_, k) => ({ up: nudgedRecords(model, k, 1), down: nudgedRecords(model, k, -1) }));
  return model.drivelines.map((on, d) =>
    model.states.map((_, s) => {
      const place = (records: readonly Float64Array[]) => placedAt(on, records[d] as Float64Array, moves[d]?.[s] as Float64Array, s);
      const centre = place(best);
      const sides = nudges.map(({ up, down }) => ({ up: place(up).placed, down: place(down).placed }));
      return { code: centre.code, ...law(model, on, centre.placed, sides) };
    }),
  );
}

function placedAt(
  { topology }: DrivelineModel,
  record: Float64Array,
  move: Float64Array,
  state: number,
): { code: PlacementCode; placed: Placed } {
  const placement = newPlacement(topology.joints);
  const code = placeShafts(topology, record, 0, move, state, placement);
  const { directions } = placement;
  const poses = Array.from({ length: topology.joints + 1 }, (_, s) =>
    poseOf(vec3(directions[3 * s] as number, directions[3 * s + 1] as number, directions[3 * s + 2] as number)),
  );
  const placed = {
    inclination: poses.map((pose) => pose.inclination),
    heading: poses.map((pose) => pose.heading),
    slip: placement.slip[0] as number,
  };
  return { code: code === PLACED ? PLACED : code, placed };
}

function law(
  model: CorrectionModel,
  on: DrivelineModel,
  centre: Placed,
  sides: readonly { readonly up: Placed; readonly down: Placed }[],
): Omit<PredictedPoses, "code"> {
  const slope = (of: (placed: Placed) => number): readonly number[] =>
    sides.map(({ up, down }, k) => {
      const u = model.sources[k]?.u ?? 0;
      return u > 0 ? (of(up) - of(down)) / (2 * u) : 0;
    });
  const shafts = shaftIds(on.input.driveline);
  const sources = model.sources.map(
    ({ of, path, shape, u, assumed }): ErrorSource => ({ of, path, shape, u, origin: assumed ? "assumed" : "measured" }),
  );
  return {
    poses: {
      shafts,
      inclination: centre.inclination.map((value) => value as Radians),
      heading: centre.heading.map((value) => value as Radians),
      sources,
      inclinationBy: shafts.map((_, s) => slope(({ inclination }) => inclination[s] as number)),
      headingBy: shafts.map((_, s) => slope(({ heading }) => heading[s] as number)),
      findings: on.input.poses.findings,
    },
    slip: centre.slip,
    slipBy: slope(({ slip }) => slip),
  };
}
