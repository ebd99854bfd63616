import { type Radians, radiansToDegrees } from "../../units/index.js";
import { meanThickness, padLengthOf } from "../geometry/wedge-shift.js";
import { type AxleWedge, type CorrectionDriveline, toMillimetres } from "../model/index.js";
import { type Instruction, instruction } from "./instruction.js";

/** A removed wedge leaves a rest of rounding. */
const NO_WEDGE = 1e-9;

/**
 * Which way the thick end points. Nose up means the pinion's side of the pad goes up: under a spring above the axle the gap opens on the far side of the
 * pinion, over a spring below the axle on the pinion's side. A rear axle's pinion points forward, a front axle's rearward. Derived.
 */
export function thickEnd({ runs, axle }: CorrectionDriveline, total: number): "forward" | "rearward" | "unknown" {
  if (!axle?.springPosition) return "unknown";
  const pinionForward = runs === "rearward";
  const onPinionSide = (axle.springPosition === "below-axle") === total > 0;
  return pinionForward === onPinionSide ? "forward" : "rearward";
}

/** What to fit on the axle and what goes with it. */
export function wedgeInstructions(on: CorrectionDriveline, wedge: AxleWedge, amount: number): readonly Instruction[] {
  const total = wedge.fitted + amount;
  const gone = Math.abs(total) < NO_WEDGE;
  const added = toMillimetres(meanThickness(wedge, gone ? 0 : total) - meanThickness(wedge, wedge.fitted));
  const pad = padLengthOf(wedge);
  const params = {
    adjuster: wedge.id,
    driveline: on.driveline.id,
    changeDeg: radiansToDegrees(amount as Radians),
    wedgeDeg: radiansToDegrees(Math.abs(total) as Radians),
    fittedDeg: radiansToDegrees(wedge.fitted),
    thickEnd: thickEnd(on, total),
    thinMm: toMillimetres(wedge.thinEdge),
    thickMm: toMillimetres(wedge.thinEdge + pad * Math.tan(Math.abs(total))),
    padLengthMm: toMillimetres(pad),
    padAssumed: wedge.padLength === null,
  };
  const { axle } = on;
  const caster = axle?.steered ? axle.caster : null;
  return [
    instruction(gone ? "remove-wedge" : "fit-wedge", params, "supported-vehicle", "brake-and-steering-lines"),
    instruction("same-on-both-sides", { adjuster: wedge.id }),
    ...(added > 0
      ? [
          instruction("centre-bolt-longer", { adjuster: wedge.id, byMm: added }),
          instruction("u-bolts-longer", { adjuster: wedge.id, byMm: added }),
        ]
      : []),
    ...(caster
      ? [
          instruction("caster-changes", {
            driveline: on.driveline.id,
            beforeDeg: radiansToDegrees(caster.value),
            afterDeg: radiansToDegrees((caster.value - amount) as Radians),
            minimumDeg: radiansToDegrees(caster.minimum),
            maximumDeg: radiansToDegrees(caster.maximum),
          }),
        ]
      : []),
    instruction("check-brake-hose", { driveline: on.driveline.id }),
  ];
}
