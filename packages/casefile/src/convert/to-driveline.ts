import type { Centring, Driveline, Joint, Section } from "@halfturn/engine/kinematics";
import { degreesToRadians } from "@halfturn/engine/units";
import type { Case, CaseJoint, CaseSection } from "../schema/case.js";
import { itemAt } from "./item-at.js";
import { fromMillimetres } from "./lengths.js";
import { type PhasingAt, phasingAt } from "./phasing-at.js";

/** `drivelines[index]` of a case as the engine knows it, phased as at `gauging[gauging]`; null = as the driveline itself is written. */
export function toDriveline(document: Case, index: number, gauging: number | null): Driveline {
  const driveline = itemAt(document.drivelines, index, "drivelines");
  return {
    id: driveline.id,
    joints: driveline.joints.map(toJoint),
    sections: driveline.sections.map((section) => toSection(section, phasingAt(document, driveline, section, gauging))),
  };
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
const toSection = ({ id, lengthMm }: CaseSection, { phasingDeg, measured }: PhasingAt): Section => ({
  id,
  phasing: phasingDeg === null ? null : degreesToRadians(phasingDeg),
  phasingMeasured: measured,
  ...(lengthMm === undefined ? {} : { length: fromMillimetres(lengthMm) }),
});
