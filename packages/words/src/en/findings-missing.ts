import type { FindingCatalogue } from "../catalogue.js";

/** Readings and facts that are missing. */
export const missingFindings = {
  "gauging.nothing-read": {
    title: "Nothing gauged",
    says: () => "No shaft of this driveline has been gauged, so there is nothing to compute.",
    doNext: () => "Gauge source, every section and the pinion at ride height, each with which end is lower and from which side.",
  },
  "gauging.shaft-not-read": {
    title: "A shaft was not gauged",
    says: (of) => `${of.name("shaft")} was not gauged; its joints and everything across them are unknown.`,
    doNext: (of) => `${of.readPlace("read")} Note which end is lower.`,
  },
  "gauging.level-not-read": {
    title: "No shaft read against the horizontal",
    says: (of) =>
      `${of.numbers.all(of.names("shafts"))} were read against one another only: the angles of the joints between them hold, but how the shafts lie was taken as level on average, give or take ${of.gauged("assumedDeg")}.`,
    doNext: (of) => `${of.readPlace("read")} Read it against the horizontal, with the gauge not zeroed on another shaft.`,
  },
  "gauging.group-not-tied": {
    title: "Shafts read against one another only",
    says: (of) =>
      `${of.numbers.all(of.names("shafts"))} were read against one another, but nothing ties them to the other shafts, so no angle that they take part in is answered.`,
    doNext: (of) => of.readPlace("read"),
  },
  "gauging.no-check-reading": {
    title: "No check reading",
    says: (of) => `Nothing checks the reading of ${of.name("shaft")}, so a slip there cannot be noticed.`,
    doNext: (of) => of.readPlace("extra"),
  },
  "gauging.zero-not-checked": {
    title: "Gauge zero not checked",
    says: (of) => `The zero of the gauge is unknown; ±${of.gauged("assumedDeg")} was allowed for it, which widens the intervals.`,
    doNext: () => "Do the turn-round check: read, turn the gauge round on the same spot, read again. Enter both.",
  },
  "gauging.sides-mixed": {
    title: "Read from both sides",
    says: (of) =>
      of.text("zeroKnown") === "true"
        ? "Readings were taken from left and right. The turn-round check gives the gauge's zero, so it is allowed for."
        : "Readings were taken from left and right, so an error of the gauge's zero enters with both signs and does not cancel between shafts.",
    doNext: (of) =>
      of.text("zeroKnown") === "true"
        ? "Nothing; next time read all shafts from one side."
        : "Do the turn-round check, or read all shafts from one side.",
  },
  "gauging.heading-not-measured": {
    title: "Plan view not measured",
    says: (of) =>
      `${of.numbers.all(of.names("shafts"))} ${of.names("shafts").length === 1 ? "was" : "were"} taken to run straight along the vehicle in plan view, give or take half a degree.`,
    doNext: () => "If a shaft runs to one side, measure the sideways offset between its two ends and the distance between them.",
  },
  "gauging.check-lower-end": {
    title: "Check which end is lower",
    says: (of) =>
      `${of.name("shaft")} is noted as ${of.lean("inclinationDeg")} and nothing checks that; with the other end lower, the joints beside it would work at ${of.angle("mirroredAnglesDeg")} together instead of ${of.angle("anglesDeg")}.`,
    doNext: () => "Look at the shaft: which end is lower? Confirm the word in the reading, or correct it.",
  },
  "driveline.phasing-not-measured": {
    title: "Phasing assumed, not measured",
    says: (of) => `The phasing of ${of.name("section")} was entered without being measured.`,
    doNext: () => "Compare the yokes at both ends of the section, with a gauge on each or by a straight edge, and enter what you find.",
  },
  "driveline.phasing-unknown": {
    title: "Phasing unknown",
    says: (of) => `The phasing of ${of.name("section")} is unknown, so cancellation and motion cannot be computed.`,
    doNext: () => "Measure the angle from its source-end yoke to its driven-end yoke; in line is 0°, a quarter turn 90°.",
  },
  "driveline.arm-reference-missing": {
    title: "No yoke to count the phasing from",
    says: (of) =>
      `${of.name("section")} ends at a joint without a yoke, so its phasing has no reference and the motion across it is unknown.`,
    doNext: () => "Carry a mark from the neighbouring yoke through that joint, and enter the phasing against the mark.",
  },
  "driveline.better-phasing": {
    title: "Another phasing would leave less",
    says: (of) =>
      `With ${of.name("section")} phased at ${of.phasing("bestDeg")} instead of ${of.phasing("phasingDeg")}, the equivalent angle would be ${of.angle("bestEquivalentDeg")} instead of ${of.angle("equivalentDeg")}.`,
    doNext: () =>
      "Check that the section is assembled as its maker meant (look for match-marks) before changing anything; check balance after rephasing.",
  },
  "vehicle.no-maximum-speed": {
    title: "Highest shaft speed not given",
    says: (of) =>
      `The highest propeller-shaft speed is not in the case; ${of.has("assumedRpm") ? of.speed("assumedRpm") : of.numbers.speed(3000)} was taken. The limit of every cross joint depends on it.`,
    doNext: () => "Enter vehicle.maxShaftSpeedRpm: engine speed at the highest road speed, divided by the ratio of the gear driven.",
  },
} satisfies Partial<FindingCatalogue>;
