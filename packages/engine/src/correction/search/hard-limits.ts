import { type Radians, radiansToDegrees } from "../../units/index.js";
import type { CorrectionModel, DrivelineModel } from "../geometry/correction-model.js";
import type { Placement, PlacementCode } from "../geometry/place-shafts.js";
import { SHAFT_OUT_OF_REACH, SPACER_OUT_OF_REACH } from "../geometry/place-shafts.js";
import { type Reason, type ReasonCode, reason, type Slip, toMillimetres } from "../model/index.js";

/** Lengths equal to within this are equal, metres: far below a tape's step, far above rounding. */
const SAME_LENGTH = 1e-9;

/** The slip spline that gives way, lengths in metres; null where none was described. */
export const slipOf = ({ input, topology }: DrivelineModel): Slip | null => {
  const section = input.driveline.sections[topology.slipSection];
  return input.slips.find(({ sectionId }) => sectionId === section?.id) ?? null;
};

/** Whether both ends of the slip's travel are known. */
export const slipKnown = (on: DrivelineModel): boolean => {
  const slip = slipOf(on);
  return on.topology.full && slip !== null && slip.engaged !== null && slip.minimumEngaged !== null && slip.inwardTravel !== null;
};

/** Which end of the slip's travel is passed, travel in metres and + when pulled out; null = neither, as far as it is known. */
export function slipBlocks(slip: Slip | null, travel: number): "correction.slip-below-minimum" | "correction.slip-bottoms" | null {
  if (!slip) return null;
  const { engaged, minimumEngaged, inwardTravel } = slip;
  if (engaged !== null && minimumEngaged !== null && engaged - travel < minimumEngaged - SAME_LENGTH)
    return "correction.slip-below-minimum";
  return inwardTravel !== null && -travel > inwardTravel + SAME_LENGTH ? "correction.slip-bottoms" : null;
}

/** What a placement code means. */
export const placementReason = (code: PlacementCode): ReasonCode =>
  code === SPACER_OUT_OF_REACH
    ? "correction.spacer-out-of-reach"
    : code === SHAFT_OUT_OF_REACH
      ? "correction.shaft-out-of-reach"
      : "correction.guide-out-of-reach";

/** The hard limit that one driveline breaks in one state, once placed; null = none. */
export function stateReason(model: CorrectionModel, d: number, s: number, code: PlacementCode, placement: Placement): Reason | null {
  const on = model.drivelines[d] as DrivelineModel;
  const params = { driveline: on.input.driveline.id, state: model.states[s]?.id ?? "" };
  if (code !== 0) return reason(placementReason(code), on.input.path, params);
  const slip = slipOf(on);
  const travel = placement.slip[0] as number;
  const blocked = on.topology.full ? slipBlocks(slip, travel) : null;
  if (!blocked || !slip) return null;
  const limit =
    blocked === "correction.slip-bottoms"
      ? { inwardTravelMm: toMillimetres(slip.inwardTravel ?? 0) }
      : { minimumEngagedMm: toMillimetres(slip.minimumEngaged ?? 0) };
  return reason(blocked, on.input.path, { ...params, section: slip.sectionId, slipTravelMm: toMillimetres(travel), ...limit });
}

/** Caster limits: they depend on the amounts alone. */
export function casterReason(model: CorrectionModel, amounts: ArrayLike<number>): Reason | null {
  for (let d = 0; d < model.drivelines.length; d++) {
    const { input } = model.drivelines[d] as DrivelineModel;
    const caster = input.axle?.steered ? input.axle.caster : null;
    if (!caster) continue;
    const after = caster.value - wedgeTurn(model, d, amounts);
    if (wedgeTurn(model, d, amounts) !== 0 && (after < caster.minimum - 1e-12 || after > caster.maximum + 1e-12)) {
      return reason("correction.caster-out-of-limits", input.path, {
        driveline: input.driveline.id,
        casterDeg: radiansToDegrees(after as Radians),
      });
    }
  }
  return null;
}

/** Nose-up turn that wedges give a driveline's axle. */
export function wedgeTurn(model: CorrectionModel, d: number, amounts: ArrayLike<number>): number {
  let sum = 0;
  model.adjusters.forEach(({ adjuster, drivelines }, k) => {
    if (adjuster.kind === "axle-wedge" && drivelines.includes(d)) sum += amounts[k] as number;
  });
  return sum;
}
