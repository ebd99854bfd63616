import { shaftIds } from "../../kinematics/index.js";
import type { Metres } from "../../units/index.js";
import { type CorrectionDriveline, type Powertrain, toChain, type VehiclePoint } from "../model/index.js";
import { type Quantities, STAND_IN_LENGTH } from "./record.js";

const NOUGHT: VehiclePoint = { forward: 0 as Metres, left: 0 as Metres, up: 0 as Metres };

/** Best estimate of everything a record is made of. A shaft that was not gauged stands level; callers refuse such a driveline before it matters. */
export function nominalQuantities(input: CorrectionDriveline, powertrain: Powertrain | null, states: number): Quantities {
  const { driveline, poses, runs, axle, supports } = input;
  const row = shaftIds(driveline).map((id) => poses.shafts.indexOf(id));
  const lengths = driveline.sections.map(({ length }) => length ?? STAND_IN_LENGTH);
  return {
    inclination: row.map((s) => poses.inclination[s] ?? 0),
    heading: row.map((s) => poses.heading[s] ?? 0),
    length: [...lengths],
    bearing: driveline.joints.map(({ id }) => supports.find(({ jointId }) => jointId === id)?.bearingToJoint ?? 0),
    powertrain: powertrainPlaces(input, powertrain),
    arm: axle?.centreToJoint ?? 0,
    above: axle?.centreToJoint == null ? 0 : axle.jointAboveCentre,
    guideError: 0,
    padError: 0,
    stateError: new Array<number>(states).fill(0),
  };

  function powertrainPlaces({ firstJoint }: CorrectionDriveline, at: Powertrain | null): [number, number, number, number] {
    if (!at) return [0, 0, 1, 0];
    const joint = firstJoint ?? NOUGHT;
    const pivot = toChain(runs, {
      forward: (at.pivotForward - joint.forward) as Metres,
      left: 0 as Metres,
      up: (at.pivotUp - joint.up) as Metres,
    });
    const mount = toChain(runs, {
      forward: (at.mountForward - at.pivotForward) as Metres,
      left: 0 as Metres,
      up: (at.mountUp - at.pivotUp) as Metres,
    });
    return [pivot.x, pivot.z, mount.x, mount.z];
  }
}

/** Copies the best estimate over a scratch set, so that a draw can add its errors. */
export function resetQuantities(to: Quantities, from: Quantities): void {
  for (const key of ["inclination", "heading", "length", "bearing", "powertrain", "stateError"] as const) {
    const source = from[key];
    const target = to[key];
    for (let k = 0; k < source.length; k++) target[k] = source[k] as number;
  }
  to.arm = from.arm;
  to.above = from.above;
  to.guideError = from.guideError;
  to.padError = from.padError;
}

/** A copy that can be written to. */
export const copyQuantities = (from: Quantities): Quantities => ({
  ...from,
  inclination: [...from.inclination],
  heading: [...from.heading],
  length: [...from.length],
  bearing: [...from.bearing],
  powertrain: [...from.powertrain],
  stateError: [...from.stateError],
});
