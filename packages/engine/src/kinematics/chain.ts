import type { ShaftPose } from "../geometry/index.js";
import { type ArmMap, compose, rotationMap } from "./arm-map.js";
import type { Driveline, Joint } from "./driveline.js";
import { crossJoint, doubleCrossJoint, type JointState, uniformJoint } from "./joint-map.js";

/** A driveline in one position: its joints' states and the maps of its parts. n joints, n - 1 sections. */
export interface ChainState {
  readonly joints: readonly JointState[];
  /** [k]: source arm to the source-end yoke of section k; [n - 1]: to the driven end. */
  readonly fromSource: readonly ArmMap[];
  /** [k]: driven-end yoke of section k - 1 to the driven end; [0]: from the source. */
  readonly toDriven: readonly ArmMap[];
}

function jointState(joint: Joint, a: ShaftPose, b: ShaftPose): JointState {
  switch (joint.kind) {
    case "cross":
      return crossJoint(a, b);
    case "double-cross":
      return doubleCrossJoint(a, b, joint.centring);
    case "ball":
    case "flexible":
      return uniformJoint(a, b);
  }
}

/** The turn from the yoke at the source end of each section to the one at its driven end. An unknown phasing is taken as 0; `motionScope` says which results it makes meaningless. */
export const sectionTurns = ({ sections }: Driveline): readonly ArmMap[] => sections.map(({ phasing }) => rotationMap(phasing ?? 0));

/** The whole chain at the given poses (n + 1 of them, power order, chain frame). turns: those of its sections, where many poses share them. */
export function chainState(driveline: Driveline, poses: readonly ShaftPose[], turns = sectionTurns(driveline)): ChainState {
  const n = driveline.joints.length;
  if (poses.length !== n + 1) throw new RangeError(`a chain of ${n} joints has ${n + 1} shafts, not ${poses.length}`);
  const joints = driveline.joints.map((joint, k) => jointState(joint, poses[k] as ShaftPose, poses[k + 1] as ShaftPose));

  const fromSource: ArmMap[] = [(joints[0] as JointState).map];
  for (let k = 1; k < n; k++) {
    fromSource.push(compose((joints[k] as JointState).map, compose(turns[k - 1] as ArmMap, fromSource[k - 1] as ArmMap)));
  }
  const toDriven = new Array<ArmMap>(n);
  toDriven[n - 1] = (joints[n - 1] as JointState).map;
  for (let k = n - 2; k >= 0; k--) {
    toDriven[k] = compose(compose(toDriven[k + 1] as ArmMap, turns[k] as ArmMap), (joints[k] as JointState).map);
  }
  return { joints, fromSource, toDriven };
}

/** The map of the whole chain, source arm to driven arm. */
export const wholeChain = (state: ChainState): ArmMap => state.fromSource[state.fromSource.length - 1] as ArmMap;
