import { shaftIds } from "../../kinematics/index.js";
import type { CorrectionDriveline } from "../model/index.js";

/** What of a driveline's geometry is known for good: who holds which joint, which section gives way, and where each number stands in a record. */
export interface Topology {
  /** Number of joints; n + 1 shafts, n - 1 sections. */
  readonly joints: number;
  /** [j]: which section the bearing beside joint j sits on: -1 the one on its source side, +1 the one on its driven side, 0 the joint itself is held. */
  readonly bearingSide: readonly (-1 | 0 | 1)[];
  /** Section whose length gives way: the slip spline. Without one described, the last. -1 for a driveline without sections. */
  readonly slipSection: number;
  readonly slipGiven: boolean;
  /** Every section has a length. Without, only the source and the pinion turn and no joint centre moves. */
  readonly full: boolean;
  /** The axle's arm is known; without it a turn of the pinion leaves the last joint where it is. */
  readonly armKnown: boolean;
  readonly layout: RecordLayout;
}

/**
 * Where each number stands in a record of one draw: a flat row, because the search reads millions of them.
 * Lengths in metres, chain frame, origin in the first joint centre as gauged.
 */
export interface RecordLayout {
  /** Direction of the source (3). */
  readonly source: number;
  /** sin i, cos i, sin h, cos h of the driven shaft. */
  readonly pinion: number;
  /** Powertrain pivot (x, z) from the first joint, then rear mount (x, z) from the pivot. */
  readonly powertrain: number;
  /** centreToJoint, jointAboveCentre. */
  readonly arm: number;
  /** Error of the guide's nose-up turn for each metre of travel, rad/m. */
  readonly guideError: number;
  /** Relative error of the wedge's thickness. */
  readonly padError: number;
  /** Joint centres (3 n). */
  readonly centres: number;
  /** Section lengths (n - 1). */
  readonly lengths: number;
  /** Bearing to joint (n, ends unused). */
  readonly bearings: number;
  /** Directions of the sections as gauged (3 (n - 1)). */
  readonly sections: number;
  /** Error of the pinion's turn in each state. */
  readonly stateErrors: number;
  readonly stride: number;
}

/** Places of all numbers in a record, for 1 to 6 joints and so many vehicle states. */
export function recordLayout(joints: number, states: number): RecordLayout {
  const centres = 15;
  const lengths = centres + 3 * joints;
  const bearings = lengths + (joints - 1);
  const sections = bearings + joints;
  const stateErrors = sections + 3 * (joints - 1);
  return {
    source: 0,
    pinion: 3,
    powertrain: 7,
    arm: 11,
    guideError: 13,
    padError: 14,
    centres,
    lengths,
    bearings,
    sections,
    stateErrors,
    stride: stateErrors + states,
  };
}

/** Reads the topology of a driveline; `states` is how many vehicle states will be looked at. */
export function topologyOf(input: CorrectionDriveline, states: number): Topology {
  const { driveline, supports, slips, axle } = input;
  const ids = shaftIds(driveline);
  const given = slips.map(({ sectionId }) => ids.indexOf(sectionId) - 1).filter((section) => section >= 0);
  const bearingSide = driveline.joints.map((joint): -1 | 0 | 1 => {
    const support = supports.find(({ jointId }) => jointId === joint.id);
    if (!support?.bearingToJoint) return 0;
    return support.bearingIs === "source-side" ? -1 : 1;
  });
  return {
    joints: driveline.joints.length,
    bearingSide,
    slipSection: given[0] ?? driveline.sections.length - 1,
    slipGiven: given.length > 0,
    full: driveline.sections.every((section) => section.length !== undefined),
    armKnown: axle?.centreToJoint != null,
    layout: recordLayout(driveline.joints.length, states),
  };
}
