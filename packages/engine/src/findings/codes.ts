import { RECORDING_FINDING_CODES } from "./recording-codes.js";
import { VIBRATION_FINDING_CODES } from "./vibration-codes.js";

/** Every finding the tool can make. Words for each stand in the catalogue of every language; the union keeps the two in step. */
export const FINDING_CODES = [
  // The vehicle was not standing as it drives.
  "gauging.not-at-ride-height",
  "gauging.wheels-hanging",
  "gauging.laden",
  // Readings that contradict one another.
  "gauging.tube-ends-disagree",
  "gauging.repeats-disagree",
  "gauging.difference-disagrees",
  "gauging.sides-disagree",
  "gauging.zero-check-disagrees",
  "gauging.wrong-side-of-level",
  "gauging.rows-swapped",
  "gauging.not-zeroed",
  "gauging.reading-set-aside",
  // Readings that are missing.
  "gauging.shaft-not-read",
  "gauging.level-not-read",
  "gauging.group-not-tied",
  "gauging.no-check-reading",
  "gauging.zero-not-checked",
  "gauging.sides-mixed",
  "gauging.heading-not-measured",
  "gauging.check-lower-end",
  "gauging.nothing-read",
  // The driveline itself.
  "driveline.phasing-not-measured",
  "driveline.phasing-unknown",
  "driveline.arm-reference-missing",
  "driveline.better-phasing",
  "vehicle.no-maximum-speed",
  // Against the limits.
  "joint.over",
  "joint.under",
  "joint.uncertain",
  "cancellation.over",
  "cancellation.uncertain",
  "cancellation.bench-disagrees",
  "motion.driven-over",
  "motion.driven-high",
  "motion.drive-inertia-over",
  "motion.coast-inertia-over",
  "motion.uncertain",
  // What a person decided.
  "decision.stop-accepted",
  // A recording.
  ...RECORDING_FINDING_CODES,
  ...VIBRATION_FINDING_CODES,
] as const;

export type FindingCode = (typeof FINDING_CODES)[number];
