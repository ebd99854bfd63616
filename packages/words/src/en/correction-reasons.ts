import type { CorrectionReader } from "../correction-reader.js";
import type { CorrectionWords } from "../correction-words.js";

const inState = (of: CorrectionReader): string => (of.has("state") ? ` in state ${of.state}` : "");

export const reasons: CorrectionWords["reasons"] = {
  "correction.stop-finding": (of) =>
    `${of.driveline}: a stop finding says that what was gauged are not road angles; gauge again, or override it with --accept CODE (analyse names the code)`,
  "correction.phasing-not-measured": (of) =>
    `the phasing of ${of.part("section")} was not measured, and a plan built on it would be a guess; measure it, then write phasingDeg and "phasingMeasured": true, or "phasings" in a gauging after correction`,
  "correction.shaft-not-gauged": (of) => `${of.part("shaft")} of ${of.driveline} was not gauged; gauge it and add the reading`,
  "correction.moves-refused-driveline": (of) =>
    `${of.adjuster} would also move ${of.driveline}, whose angles are not known to be right; gauge that driveline again first`,
  "correction.no-driveline": () => "no driveline has been gauged; gauge one at ride height and add the readings",
  "correction.no-adjusters": () => 'the case lists nothing that could be adjusted; add at least one entry to "adjusters" with its stock',
  "correction.unknown-adjuster": (of) => `there is no adjuster "${of.text("adjuster")}" in the case; add it or correct the id`,
  "correction.unknown-driveline": (of) =>
    `${of.driveline} is not among the drivelines in use, so its adjuster cannot be; gauge that driveline first`,
  "correction.unknown-joint": (of) => `${of.adjuster} acts on joint "${of.text("joint")}", which is not there; correct the id`,
  "correction.unknown-section": (of) => `${of.adjuster} acts on section "${of.text("section")}", which is not there; correct the id`,
  "correction.support-not-given": (of) =>
    `${of.adjuster} moves the bearing at ${of.part("joint")}, but no support is noted at that joint; add "support" to it`,
  "correction.length-not-measured": (of) =>
    `${of.adjuster} needs every length, and that of ${of.part("section")} is missing; measure it joint centre to joint centre and write lengthMm`,
  "correction.powertrain-not-measured": (of) =>
    `${of.adjuster} turns the powertrain, but its pivot and rear mount are not noted; measure them and write vehicle.powertrain`,
  "correction.axle-guide-not-measured": (of) =>
    `${of.adjuster} moves the axle along its springs or links, which are not noted; write pinionPitchDegPerMm, or the axle's suspension`,
  "correction.spline-not-whole": (of) => `${of.adjuster} turns in whole spline steps, not ${of.plain("steps")}; give a whole number`,
  "correction.amount-not-finite": (of) => `${of.adjuster}: the amount is no number; give one`,
  "correction.removal-exceeds-fitted": (of) =>
    `${of.adjuster}: ${of.length("amountMm")} cannot be taken out where ${of.length("fittedMm")} is fitted; take out no more than that`,
  "correction.caster-not-given": (of) =>
    `${of.adjuster} changes the caster of a steered axle, and its caster and limits are not noted; write casterDeg, casterMinimumDeg and casterMaximumDeg`,
  "correction.caster-out-of-limits": (of) =>
    `the caster of ${of.driveline} would be ${of.signedAngle("casterDeg")}, outside its limits; use a smaller wedge`,
  "correction.spacer-out-of-reach": (of) =>
    `${of.driveline}: no turn of the powertrain raises its mount that far${inState(of)}; use a smaller spacer, or check vehicle.powertrain`,
  "correction.guide-out-of-reach": (of) =>
    `${of.driveline}: the axle's springs or links cannot reach that far${inState(of)}; use a smaller change, or check the axle's suspension`,
  "correction.shaft-out-of-reach": (of) =>
    `${of.driveline}: the joints would lie further apart than the shafts reach${inState(of)}; use a smaller change, or check the lengths`,
  "correction.slip-below-minimum": (of) =>
    `the slip spline of ${of.part("section")} would be pulled out by ${of.length("slipTravelMm")}${inState(of)}, past its minimum engagement; use a smaller change or a longer shaft`,
  "correction.slip-bottoms": (of) =>
    `the slip spline of ${of.part("section")} would be pushed in by ${of.length("slipTravelMm")}${inState(of)}, past its travel; use a smaller change or a shorter shaft`,
  "correction.too-many-combinations": (of) =>
    `the stock gives ${of.numbers.plain(of.value("combinations"), 0)} combinations, more than can be looked through; allow fewer changes at once with --max-changes, or keep some adjusters out with --keep`,
};
