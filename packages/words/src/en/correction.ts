import { changeAmount, firstChangeAmount } from "../change-amount.js";
import type { CorrectionWords } from "../correction-words.js";
import { choices } from "../problem-words.js";
import { instructions } from "./correction-instructions.js";
import { limits } from "./correction-limits.js";
import { reasons } from "./correction-reasons.js";
import { CHOICES } from "./problems.js";

const KINDS: Readonly<Record<string, string>> = {
  angle: "an angle",
  length: "a length",
  torque: "a torque",
  speed: "a road speed",
  rotation: "a speed of rotation",
};
const SAMPLE = { deg: "2deg", mm: "6mm", step: "1step" } as const;
const UNITS = { deg: "degrees", mm: "millimetres", step: "spline steps" } as const;

export const correction: CorrectionWords = {
  instructions,
  reasons,
  limits,
  changeProblems: {
    "change-form": ({ got }) => `"${got}" is not a change; write ID=AMOUNT, such as wedge=2deg, spacer=-6mm or front=1step`,
    "no-adjusters": () => 'the case lists nothing that could be adjusted; add at least one entry to "adjusters" with its stock',
    "unknown-adjuster": ({ got, ...which }, n) => `there is no adjuster "${got}" in this case; ${choices(which, n, CHOICES)}`,
    "adjuster-twice": ({ adjuster }) => `"${adjuster}" is given more than once; give its whole amount once`,
    "unit-missing": ({ adjuster, got, expected }) =>
      `"${got}" has no unit; "${adjuster}" takes ${UNITS[expected]}, so write ${adjuster}=${SAMPLE[expected]}`,
    "wrong-unit": ({ adjuster, got, expected }) =>
      `"${got}" is in the wrong unit; "${adjuster}" takes ${UNITS[expected]}, so write ${adjuster}=${SAMPLE[expected]}`,
    "amount-unreadable": ({ adjuster, got, expected }, _, fault) =>
      `"${got}" cannot be read: ${fault}; write ${adjuster}=${SAMPLE[expected]}`,
    "steps-not-whole": ({ adjuster, got }) => `"${got}" is no whole number of spline steps; write ${adjuster}=${SAMPLE.step}`,
    "beyond-stock": ({ adjuster, amount, unit, minimum, maximum }, n) =>
      `${changeAmount(amount, unit, n)} is beyond what "${adjuster}" has in stock; write from ${firstChangeAmount(minimum, unit, n)} to ${changeAmount(maximum, unit, n)}, or add the size to its stock`,
    "beyond-fitted": ({ adjuster, amount, unit, fitted }, n) =>
      `${changeAmount(Math.abs(amount), unit, n)} cannot be taken out at "${adjuster}", where ${changeAmount(fitted, unit, n)} is fitted; take out no more than that`,
  },
  quantityFaults: {
    "quantity.empty": () => "nothing is written",
    "quantity.number-expected": () => "a number has to come first",
    "quantity.unexpected": ({ found }) => `"${found}" does not belong there`,
    "quantity.unknown-unit": ({ unit, found }) => `"${found ?? unit}" is not a unit that is known here`,
    "quantity.unit-of-another-kind": ({ kind, expected }) =>
      `it is ${KINDS[String(kind)] ?? kind} where ${KINDS[String(expected)] ?? expected} belongs`,
    "quantity.unit-expected": () => "the second number has no unit",
    "quantity.unit-out-of-order": ({ unit }) => `"${unit}" cannot follow the unit before it`,
    "quantity.part-too-large": ({ below, unit }) => `the part in "${unit}" has to be less than ${below}`,
    "quantity.fraction-before-part": () => "only the last part may have decimals",
    "quantity.second-decimal-sign": () => "it has two decimal signs",
    "quantity.zero-denominator": () => "a fraction cannot be over nought",
    "quantity.improper-fraction": () => "the fraction after a whole number has to be less than one",
    "quantity.too-large": () => "the number is too large",
  },
  looks: {
    "thick-end-turned-round": "The wedge may sit the wrong way round: look which way its thick edge points.",
    "change-not-taken": "The change seems not to have been made, or something takes it up again: look whether it is fitted at all.",
    "amount-fitted-differs": "Measure what was really fitted: another size than planned may have gone in.",
    "axle-not-seated": "The axle may not sit on its pads: look at the centre bolts and the tightness of the U-bolts.",
    "bearing-to-joint-length": "Measure again from the support bearing to the joint beside it.",
    "lengths-and-arms": "Measure the lengths and arms in the case again: shaft lengths, axle centre to joint, pivot and mount.",
    "other-ride-height": "The two gaugings may have been at different ride heights: compare load, tyres and how the vehicle had settled.",
    "moved-without-a-change":
      "A shaft has moved that nothing planned should move: look for a soft mount, a loose bearing or a settled spring.",
    "gauge-placing": "Place the gauge again on the same clean spots, and do the turn-round check.",
  },
  predictionVerdicts: {
    confirmed: "Every shaft stands as foretold, within the uncertainty of both.",
    differs: "Not every shaft stands as foretold.",
    "not-gauged": "No shaft has been gauged since.",
  },
  amounts: {
    "axle-wedge": (amount, positive) => `${amount} pinion nose ${positive ? "up" : "down"}`,
    "support-drop": (amount, positive) => `${amount} ${positive ? "lower" : "higher"}`,
    "support-shift": (amount, positive) => `${amount} to the ${positive ? "left" : "right"}`,
    "mount-spacer": (amount, positive) => `${amount} ${positive ? "higher" : "lower"}`,
    "ride-height": (amount, positive) => `body ${amount} ${positive ? "higher" : "lower"}`,
    rephase: (amount, positive) => `${amount} ${positive ? "clockwise" : "anticlockwise"}`,
    "link-length": (amount, positive) => `${amount} ${positive ? "longer" : "shorter"}`,
  },
  missing: {
    length: (name) => `length of ${name}, joint centre to joint centre`,
    "centre-to-joint": () => "axle centre to the last joint",
    bearing: (name) => `support bearing to joint ${name}`,
    "spring-position": () => "whether the spring lies above or below the axle",
    "pad-length": (name) => `length of the spring pad (${name})`,
    slip: (name) => `engagement and travel of the slip spline${name === "" ? "" : ` of ${name}`}`,
    "first-joint": () => "where the first joint lies from that of the first driveline",
    "axle-guide": () => "springs or links that guide the axle",
  },
  steps: (amount, one) => `${amount} spline ${one ? "step" : "steps"}`,
  asGauged: "as gauged",
  nothing: "change nothing",
  predicted: "What the change would do",
  plans: "Plans",
  planNumber: (number) => `Plan ${number}`,
  columns: { chance: "Chance", labour: "Labour", margin: "Margin", changes: "Changes" },
  readPlans:
    "Chance: how often every limit holds in every state, over all that the gauge, the tape and the assumptions leave open; with ≤ the slip spline is not counted, as it was not measured. Labour: labour and parts, in the measure of the case. Margin: what is left of the tightest limit at the best estimate; below nought it is passed.",
  chance: (share) => `chance that all limits hold: ${share}`,
  chanceUnknown: (share) => `chance not known, as the slip or a length was not measured (${share} for what can be computed)`,
  labour: (amount) => `labour and parts ${amount}`,
  state: "State",
  slipTravel: "Slip travel",
  pulledOut: (length) => `${length} outward`,
  pushedIn: (length) => `${length} inward`,
  arrow: (before, after) => `${before} → ${after}`,
  limitOf: (limit, part) => `${limit} of ${part}`,
  tightest: (limit, value, bound, state) => `Tightest: ${limit}, ${value} against ${bound}, in state ${state}.`,
  whatToDo: "What to do",
  caution: (text) => `Caution: ${text}`,
  cautionAsAt: (step) => `Caution as at step ${step}.`,
  unchanged: (driveline) => `${driveline}: nothing changes.`,
  unlikely: "Even this plan is more likely to pass a limit than to keep them all: measure again before anything is fitted.",
  comparisons: "For comparison",
  doingNothing: "Doing nothing",
  bestSingle: "The single change that helps most",
  noSingle: "no single change helps",
  withoutAxle: "Without touching the axle",
  none: "nothing to choose from",
  noneBetter: "nothing in stock betters doing nothing",
  cutToMeasure: "One change cut to measure",
  notStocked: (change) => `${change}: not in stock in this size, so it would have to be made or ordered`,
  toMeasure: "Measure still",
  nothingToMeasure: "No measurement is missing.",
  measureGain: (what, gain) => `${what}: takes up to ${gain} off the uncertainty of a joint angle`,
  measureFirst: (what) => `${what}: before anything is fitted`,
  infeasible: "Nothing in stock keeps every limit.",
  nearest: (changes) => `Nearest: ${changes}.`,
  blocks: "What blocks it",
  blockLimit: (limit, value, bound, state) => `${limit}: ${value} against a limit of ${bound}, in state ${state}`,
  blockHard: (changes, why) => `${changes} would do, but ${why}`,
  notUsed: "Adjusters that could not be used",
  leftOut: "Left out",
  neverGauged: (driveline) =>
    `${driveline} was never gauged, so nothing is said of it; what a change at the powertrain does to it is not known`,
  learned: (corrections, readings) =>
    `Lengths and arms are corrected by what was gauged after ${corrections === 1 ? "an earlier correction" : `${corrections} earlier corrections`} (${readings} readings).`,
  notLearned:
    "What was gauged after an earlier correction does not fit what that correction should have done, so nothing was learned from it: the lengths stand as taped.",
  examined: (count) => `${count} combinations looked at.`,
  anglesOnly: "A length is missing: only the parts that turn were turned, no joint centre was moved.",
  neverFit: "This may be looked at, never fitted:",
  chosen: (number, path) => `Plan ${number} recorded in ${path}.`,
  chooseHint: (path, number) => `To record plan ${number} in the case: halfturn plan ${path} --choose ${number}`,
  showHint: (path) => `To see the steps of a plan: halfturn plan ${path} --show 1`,
  searching: (share) => `Looking through the stock: ${share}`,
  stopped: "Stopped by hand. Nothing was written.",
  foretold: "Foretold",
  measured: "Gauged after",
  lookAt: "What to look at",
  chosenOn: (date) => `Chosen on ${date}.`,
};
