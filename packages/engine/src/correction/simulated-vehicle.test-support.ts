import type { PoseModel } from "../gauging/index.js";
import { shaftIds } from "../kinematics/index.js";
import { normalDeviates, uniformDeviates } from "../uncertainty/index.js";
import type { Radians } from "../units/index.js";
import { correctionModel } from "./geometry/correction-model.js";
import { newPlacement, placeShafts } from "./geometry/place-shafts.js";
import { copyQuantities } from "./geometry/quantities.js";
import { writeRecord } from "./geometry/record.js";
import { newMoves, writeMoves } from "./geometry/write-moves.js";
import type { CorrectionDriveline, CorrectionInput } from "./model/index.js";

/**
 * Draws gauge and tape errors about a true case of one driveline: what the workshop then holds in hand. The poses' sources are one a shaft.
 */
export function measuredCase(truth: CorrectionInput, seed: number): CorrectionInput {
  const uniform = uniformDeviates(seed);
  const normal = normalDeviates(uniform);
  const model = correctionModel(truth);
  const scratch = model.drivelines.map(({ nominal }) => copyQuantities(nominal));
  for (const source of model.sources) {
    const deviate = source.shape === "normal" ? normal() : Math.sqrt(3) * (2 * uniform() - 1);
    source.apply(scratch, deviate * source.u);
  }
  const drivelines = truth.drivelines.map((on, d): CorrectionDriveline => {
    const q = scratch[d] as (typeof scratch)[number];
    const ids = shaftIds(on.driveline);
    const poses: PoseModel = {
      ...on.poses,
      inclination: on.poses.shafts.map((id) => (q.inclination[ids.indexOf(id)] ?? 0) as Radians),
      heading: on.poses.shafts.map((id) => (q.heading[ids.indexOf(id)] ?? 0) as Radians),
    };
    type Length = NonNullable<CorrectionDriveline["driveline"]["sections"][number]["length"]>;
    const sections = on.driveline.sections.map((section, k) => ({ ...section, length: q.length[k] as Length }));
    const supports = on.supports.map((support) => {
      const j = on.driveline.joints.findIndex(({ id }) => id === support.jointId);
      return { ...support, bearingToJoint: q.bearing[j] as Length };
    });
    const axle = on.axle && { ...on.axle, centreToJoint: q.arm as Length, jointAboveCentre: q.above as Length };
    return { ...on, poses, supports, axle, driveline: { ...on.driveline, sections } };
  });
  return { ...truth, drivelines };
}

/** Where the shafts of the first driveline stand in the first state after amounts, by the given case's own geometry: inclinations and headings in radians. */
export function standing(input: CorrectionInput, amounts: readonly number[]): { readonly directions: Float64Array; readonly slip: number } {
  const model = correctionModel(input);
  const moves = newMoves(model);
  writeMoves(model, amounts, moves);
  const { topology, nominal } = model.drivelines[0] as (typeof model.drivelines)[number];
  const record = new Float64Array(topology.layout.stride);
  writeRecord(topology, nominal, record, 0);
  const out = newPlacement(topology.joints);
  placeShafts(topology, record, 0, moves[0]?.[0] as Float64Array, 0, out);
  return { directions: out.directions, slip: out.slip[0] as number };
}
