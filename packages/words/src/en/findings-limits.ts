import type { FindingCatalogue } from "../catalogue.js";

/** Results against their limits. */
export const limitFindings = {
  "joint.over": {
    title: "Operating angle over the limit",
    says: (of) =>
      `${of.name("joint")} works at ${of.angle("angleDeg")}, over its limit of ${of.angle("maximumDeg")} at the highest shaft speed: it wears and shakes whatever the other joints cancel.`,
    doNext: () =>
      "Bring this joint's angle down first. Look for a changed ride height, wrong wedges, or a sagged mount or support bearing before adding parts.",
  },
  "joint.under": {
    title: "Operating angle under the minimum",
    says: (of) =>
      `${of.name("joint")} works at ${of.angle("angleDeg")}, under ${of.angle("minimumDeg")}: its needles do not roll and dent their races.`,
    doNext: (of) => `Give it at least ${of.angle("minimumDeg")}, together with its partner joint so that the two still cancel.`,
  },
  "joint.uncertain": {
    title: "Operating angle uncertain",
    says: (of) =>
      `${of.name("joint")} works at ${of.angle("angleDeg")}, between ${of.angle("lowDeg")} and ${of.angle("highDeg")}: the limit lies inside that, so it cannot be said to be on either side.`,
    doNext: (of) => of.repeat ?? "Read the two shafts of this joint again, with a turn-round check of the gauge, before deciding.",
  },
  "cancellation.over": {
    title: "The joints do not cancel",
    says: (of) =>
      `What the joints leave uncancelled shakes like one joint at ${of.angle("equivalentDeg")}; the limit is ${of.angle("maximumDeg")}.`,
    doNext: () => "Confirm phasing and the two largest joint angles, then choose the correction that brings the equivalent angle down.",
  },
  "cancellation.uncertain": {
    title: "Cancellation uncertain",
    says: (of) =>
      `The equivalent angle is ${of.angle("equivalentDeg")}, between ${of.angle("lowDeg")} and ${of.angle("highDeg")}; the limit of ${of.angle("maximumDeg")} lies inside that.`,
    doNext: (of) => of.repeat ?? "Repeat the reading that carries most of the uncertainty before ordering or fitting anything.",
  },
  "cancellation.bench-disagrees": {
    title: "Bench rule and exact answer disagree",
    says: (of) =>
      `The bench rule leaves ${of.angle("benchDeg")}, the exact equivalent angle is ${of.angle("equivalentDeg")}: the rule adds angles, but the shake of a joint grows with the square of its angle.`,
    doNext: () => "Go by the equivalent angle.",
  },
  "motion.driven-over": {
    title: "Driven end shakes too hard",
    says: (of) =>
      `The driven end is accelerated by ${of.acceleration("accelerationRadS2")} at ${of.speed("shaftRpm")}; the limit is ${of.acceleration("limitRadS2")}.`,
    doNext: () => "Bring the equivalent angle down; the acceleration falls with its square.",
  },
  "motion.driven-high": {
    title: "Driven end shakes noticeably",
    says: (of) =>
      `The driven end is accelerated by ${of.acceleration("accelerationRadS2")} at ${of.speed("shaftRpm")}, past the warning at ${of.acceleration("limitRadS2")}.`,
    doNext: () => "If the complaint is a vibration twice a turn, treat this as its likely cause.",
  },
  "motion.drive-inertia-over": {
    title: "A section is shaken too hard in drive",
    says: (of) =>
      `Driven from the source, ${of.name("section")} is accelerated by ${of.acceleration("accelerationRadS2")} at ${of.speed("shaftRpm")}; the limit is ${of.acceleration("limitRadS2")}. Its own inertia shakes the driveline even where the joints cancel.`,
    doNext: (of) => `Bring down the operating angles on the source side of ${of.name("section")}.`,
  },
  "motion.coast-inertia-over": {
    title: "A section is shaken too hard on coast",
    says: (of) =>
      `Driven from the axle, ${of.name("section")} is accelerated by ${of.acceleration("accelerationRadS2")} at ${of.speed("shaftRpm")}; the limit is ${of.acceleration("limitRadS2")}.`,
    doNext: (of) => `Bring down the operating angles on the driven side of ${of.name("section")}.`,
  },
  "motion.uncertain": {
    title: "Motion uncertain",
    says: (of) => {
      const limit = of.acceleration("limitRadS2");
      const what = of.has("section") ? of.name("section") : "The driven end";
      return `${what} is accelerated by ${of.acceleration("accelerationRadS2")} at ${of.speed("shaftRpm")}, between ${of.acceleration("lowRadS2")} and ${of.acceleration("highRadS2")}; the limit of ${limit} lies inside that.`;
    },
    doNext: (of) => of.repeat ?? "Repeat the reading that carries most of the uncertainty.",
  },
} satisfies Partial<FindingCatalogue>;
