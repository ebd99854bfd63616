import { shaftIds } from "../../kinematics/index.js";
import { learnedSources, shiftQuantities } from "../learn/apply-learned.js";
import { AS_GAUGED, type CorrectionDriveline, type CorrectionInput, type Reason, reason, type VehicleState } from "../model/index.js";
import { type AdjusterModel, adjusterModel } from "./adjuster-model.js";
import { type GeometrySource, geometrySources } from "./geometry-source.js";
import { nominalQuantities } from "./quantities.js";
import type { Quantities } from "./record.js";
import { type Topology, topologyOf } from "./topology.js";

export interface DrivelineModel {
  readonly input: CorrectionDriveline;
  readonly topology: Topology;
  readonly nominal: Quantities;
}

/** The input made ready: places looked up, best estimates and error sources gathered. */
export interface CorrectionModel {
  readonly input: CorrectionInput;
  readonly states: readonly VehicleState[];
  readonly drivelines: readonly DrivelineModel[];
  readonly adjusters: readonly AdjusterModel[];
  readonly sources: readonly GeometrySource[];
  /** Why drivelines of the input are not among those of the model. */
  readonly leftOut: readonly Reason[];
}

/**
 * Makes an input ready; without states the vehicle as gauged is the only one. What was learned stands in place of the tape. A driveline of which nothing may be
 * said is left out, and every adjuster that would move it cannot be used. Never fails: see `refusals`.
 */
export function correctionModel(given: CorrectionInput): CorrectionModel {
  const leftOut = given.drivelines.flatMap(unfit);
  const input = { ...given, drivelines: given.drivelines.filter((on) => unfit(on).length === 0) };
  const states = input.states.length > 0 ? input.states : [AS_GAUGED];
  const taped = geometrySources(input, states);
  const nominals = input.drivelines.map((on) => nominalQuantities(on, input.powertrain, states.length));
  if (input.learned) shiftQuantities(nominals, taped, input.learned);
  return {
    input,
    states,
    drivelines: input.drivelines.map((on, d) => ({
      input: on,
      topology: topologyOf(on, states.length),
      nominal: nominals[d] as Quantities,
    })),
    adjusters: input.adjusters.map((adjuster) => adjusterModel(adjuster, input, leftOutIds(leftOut))),
    sources: input.learned ? learnedSources(taped, input.learned) : taped,
    leftOut,
  };
}

/** Why nothing at all may be computed from this input; empty when something may be said of at least one driveline. */
export function refusals({ drivelines }: CorrectionInput): readonly Reason[] {
  if (drivelines.length === 0) return [reason("correction.no-driveline", "drivelines")];
  const reasons = drivelines.map(unfit);
  return reasons.some(({ length }) => length === 0) ? [] : reasons.flat();
}

/** Why nothing may be said of a driveline. */
const unfit = ({ refused, driveline, poses, path }: CorrectionDriveline): readonly Reason[] => [
  ...(refused ? [reason("correction.stop-finding", path, { driveline: driveline.id })] : []),
  ...shaftIds(driveline).flatMap((shaft) =>
    poses.inclination[poses.shafts.indexOf(shaft)] == null
      ? [reason("correction.shaft-not-gauged", path, { driveline: driveline.id, shaft })]
      : [],
  ),
];

const leftOutIds = (leftOut: readonly Reason[]): readonly string[] => [...new Set(leftOut.map(({ params }) => String(params.driveline)))];
