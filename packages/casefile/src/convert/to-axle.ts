import type { Axle, AxleGuide, Caster, SideViewLink } from "@halfturn/engine/correction";
import { degreesToRadians } from "@halfturn/engine/units";
import type { CaseAxle } from "../schema/case.js";
import { fromMillimetres } from "./lengths.js";
import { degreesPerMmToRadiansPerMetre } from "./to-adjuster.js";

/** The axle at the end of a driveline as the engine knows it; what was not measured stays null. Forward and up are the vehicle's on both sides. */
export const toAxle = (axle: CaseAxle): Axle => ({
  centreToJoint: axle.centreToJointMm === undefined ? null : fromMillimetres(axle.centreToJointMm),
  jointAboveCentre: fromMillimetres(axle.jointAboveCentreMm ?? 0),
  springPosition: axle.springPosition ?? null,
  padInclination: degreesToRadians(axle.padInclinationDeg ?? 0),
  steered: axle.steered ?? false,
  caster: toCaster(axle),
  windUp: axle.windUpDeg ? { drive: degreesToRadians(axle.windUpDeg.drive), coast: degreesToRadians(axle.windUpDeg.coast) } : null,
  guide: axle.suspension ? toGuide(axle.suspension) : null,
});

/** A caster without both its limits cannot say whether a wedge may be fitted. */
function toCaster({ casterDeg, casterMinimumDeg, casterMaximumDeg }: CaseAxle): Caster | null {
  if (casterDeg == null || casterMinimumDeg == null || casterMaximumDeg == null) return null;
  return {
    value: degreesToRadians(casterDeg),
    minimum: degreesToRadians(casterMinimumDeg),
    maximum: degreesToRadians(casterMaximumDeg),
  };
}

type Suspension = NonNullable<CaseAxle["suspension"]>;
type CaseLink = Extract<Suspension, { readonly kind: "links" }>["lower"];

function toGuide(suspension: Suspension): AxleGuide {
  switch (suspension.kind) {
    case "rate":
      return { kind: "rate", pitchPerMetre: degreesPerMmToRadiansPerMetre(suspension.pinionPitchDegPerMm) };
    case "leaf":
      return {
        kind: "leaf",
        fixedEyeForward: fromMillimetres(suspension.fixedEyeForwardMm),
        fixedEyeUp: fromMillimetres(suspension.fixedEyeUpMm),
        shackleEyeForward: suspension.shackleEyeForwardMm === undefined ? null : fromMillimetres(suspension.shackleEyeForwardMm),
      };
    case "links":
      return { kind: "links", lower: toLink(suspension.lower), upper: toLink(suspension.upper) };
  }
}

const toLink = ({ frameForwardMm, frameUpMm, axleForwardMm, axleUpMm }: CaseLink): SideViewLink => ({
  frameForward: fromMillimetres(frameForwardMm),
  frameUp: fromMillimetres(frameUpMm),
  axleForward: fromMillimetres(axleForwardMm),
  axleUp: fromMillimetres(axleUpMm),
});
