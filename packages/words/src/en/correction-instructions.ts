import type { CorrectionReader } from "../correction-reader.js";
import type { CorrectionWords } from "../correction-words.js";
import { limitValues } from "../limit-values.js";
import { limits } from "./correction-limits.js";

const way = (of: CorrectionReader, key: string, up: string, down: string): string => (of.value(key) >= 0 ? up : down);
const nose = (of: CorrectionReader): string => `the pinion nose goes ${way(of, "changeDeg", "up", "down")} by ${of.angle("changeDeg")}`;

export const instructions: CorrectionWords["instructions"] = {
  "do-nothing": () => "Leave everything as it is.",
  "fit-wedge": (of) =>
    [
      `${of.adjuster}: fit a wedge of ${of.angle("wedgeDeg")} on the spring pad, ${of.length("thinMm")} at its thin and ${of.length("thickMm")} at its thick edge over ${of.length("padLengthMm")}; ${nose(of)}.`,
      of.is("thickEnd", "unknown")
        ? "Find out first whether the spring lies above or below the axle: that decides which way the thick edge points."
        : `The thick edge points toward the ${of.is("thickEnd", "forward") ? "front" : "rear"} of the vehicle.`,
      ...(of.value("fittedDeg") === 0 ? [] : ["It replaces the wedge that is there; never stack wedges."]),
      ...(of.is("padAssumed", true) ? ["The pad's length is assumed: measure it before ordering."] : []),
    ].join(" "),
  "remove-wedge": (of) => `${of.adjuster}: take the wedge out; ${nose(of)}.`,
  "fit-support-spacer": (of) =>
    `${of.adjuster}: ${way(of, "changeMm", "lower", "raise")} the support bearing at ${of.part("joint")} by ${of.length("changeMm")}, to spacers of ${of.partSize("totalMm")} in all.`,
  "remove-support-spacer": (of) =>
    `${of.adjuster}: take all spacers out at the support bearing of ${of.part("joint")}; it goes ${way(of, "changeMm", "down", "up")} by ${of.length("changeMm")}.`,
  "move-support": (of) =>
    `${of.adjuster}: move the support bearing at ${of.part("joint")} by ${of.length("byMm")} toward the vehicle's ${of.is("toward", "left") ? "left" : "right"}.`,
  "fit-mount-spacer": (of) =>
    `${of.adjuster}: bring the spacers under the rear mount of the powertrain to ${of.partSize("totalMm")} in all; the mount goes ${way(of, "changeMm", "up", "down")} by ${of.length("changeMm")}.`,
  "remove-mount-spacer": (of) =>
    `${of.adjuster}: take all spacers out under the rear mount of the powertrain; it goes down by ${of.length("changeMm")}.`,
  "change-ride-height": (of) => `${of.adjuster}: ${way(of, "changeMm", "raise", "lower")} the body by ${of.length("changeMm")}.`,
  "rephase-section": (of) =>
    `${of.adjuster}: turn the driven-end yoke of ${of.part("section")} by ${of.plain("steps")} spline ${of.value("steps") === 1 ? "step" : "steps"} (${of.angle("turnDeg")}) ${of.is("direction", "clockwise") ? "clockwise" : "anticlockwise"}, seen from the source end; its phasing goes from ${of.signedAngle("beforeDeg")} to ${of.signedAngle("afterDeg")}.`,
  "set-link-length": (of) =>
    `${of.adjuster}: make the ${of.is("link", "lower") ? "lower" : "upper"} links ${way(of, "changeMm", "longer", "shorter")} by ${of.length("changeMm")}.`,
  "same-on-both-sides": (of) => `${of.adjuster}: do the same on both sides of the axle.`,
  "centre-bolt-longer": (of) => `${of.adjuster}: the springs' centre bolts have to be longer by ${of.partSize("byMm")}.`,
  "u-bolts-longer": (of) => `${of.adjuster}: the U-bolts have to be longer by ${of.partSize("byMm")}; fit new ones.`,
  "bolts-longer": (of) => `${of.adjuster}: the bolts have to be longer by ${of.partSize("byMm")}.`,
  "caster-changes": (of) =>
    `Caster goes from ${of.signedAngle("beforeDeg")} to ${of.signedAngle("afterDeg")}; ${of.signedAngle("minimumDeg")} to ${of.signedAngle("maximumDeg")} is allowed. Have the wheel alignment checked before the vehicle is handed back.`,
  "match-mark": (of) => `Match-mark both halves of ${of.part("section")} before they come apart.`,
  "check-balance": (of) => `Have the balance of ${of.part("section")} checked: turning one half against the other changes it.`,
  "tighten-to-maker": () =>
    "Tighten everything to the vehicle maker's torques, in the maker's order, with the weight on the wheels where the maker asks for it.",
  "replace-single-use-fasteners": () =>
    "Replace every fastener that may be used once only: stretch bolts, self-locking nuts, U-bolts, strap bolts.",
  "check-slip": (of) =>
    `Check the slip spline of ${of.part("section")}: over all states it ${slipTravel(of)}; ${of.length("engagedMm")} stay engaged, at least ${of.length("minimumEngagedMm")} is needed.`,
  "measure-slip-before-fitting": (of) =>
    `Measure before fitting anything: how far the slip spline of ${of.part("section")} is engaged, how far it must be, and how far it can still be pushed in. Without that nobody knows whether the shaft comes apart or bottoms.`,
  "check-brake-hose": () =>
    "Check that brake hoses, lines and cables at the axle reach without strain and touch nothing, through the whole travel.",
  "check-exhaust-clearance": () => "Check that shaft and bearing clear the exhaust and the body through the whole travel.",
  "check-powertrain-clearance": () =>
    "Check fan, hoses, shift linkage and exhaust joints: the powertrain has turned about its front mounts.",
  "check-headlamps": () => "Have the headlamps aimed again.",
  "trade-off": (of) => {
    const { value, bound } = limitValues(of);
    const cured = of.states("curedStates");
    const gain = cured.length === 0 ? "" : `, while ${of.numbers.all(cured)} ${cured.length === 1 ? "is" : "are"} put right`;
    return `Mind ${cured.length === 0 ? "" : "the price in "}state ${of.state}: ${limits[limitKind(of)]} of ${of.part("of")} goes to ${value}, past its limit of ${bound}${gain}.`;
  },
  "gauge-again": () => "Gauge everything again at ride height and enter it as a gauging after correction, then prove it on the road.",
};

const limitKind = (of: CorrectionReader): keyof typeof limits => of.text("limit") as keyof typeof limits;

/** Nothing is said of a direction in which it does not move; a number below nought means the same. */
function slipTravel(of: CorrectionReader): string {
  const [out, into] = [of.length("outMm"), of.length("inMm")];
  if (of.value("outMm") <= 0 && of.value("inMm") > 0) return `moves inward only, by ${into} at most`;
  if (of.value("inMm") <= 0 && of.value("outMm") > 0) return `moves outward only, by ${out} at most`;
  return `moves ${out} outward at most and ${into} inward at most`;
}
