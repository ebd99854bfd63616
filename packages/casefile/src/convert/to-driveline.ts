import type { Centring, Driveline, Joint, Section } from "@halfturn/engine/kinematics";
import { degreesToRadians } from "@halfturn/engine/units";
import type { Case, CaseJoint, CaseSection } from "../schema/case.js";
import { itemAt } from "./item-at.js";
import { fromMillimetres } from "./lengths.js";

/** `drivelines[index]` of a case as the engine knows it. */
export function toDriveline(document: Case, index: number): Driveline {
  const { id, joints, sections } = itemAt(document.drivelines, index, "drivelines");
  return { id, joints: joints.map(toJoint), sections: sections.map(toSection) };
}

function toJoint({ id, kind, centring, statedAngleDeg }: CaseJoint): Joint {
  return {
    id,
    kind,
    ...(centring ? { centring: toCentring(centring) } : {}),
    ...(statedAngleDeg === undefined ? {} : { statedAngle: degreesToRadians(statedAngleDeg) }),
  };
}

const toCentring = ({ crossesApartMm, ballFromCrossMm, ballFixedTo }: NonNullable<CaseJoint["centring"]>): Centring => ({
  crossesApart: fromMillimetres(crossesApartMm),
  ballFromCross: fromMillimetres(ballFromCrossMm),
  ballFixedTo,
});

/** A phasing that is not written is not known; one without `phasingMeasured` was not measured. */
function toSection({ id, phasingDeg, phasingMeasured, lengthMm }: CaseSection): Section {
  return {
    id,
    phasing: typeof phasingDeg === "number" ? degreesToRadians(phasingDeg) : null,
    phasingMeasured: phasingMeasured ?? false,
    ...(lengthMm === undefined ? {} : { length: fromMillimetres(lengthMm) }),
  };
}
