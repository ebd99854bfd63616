import { directionOf, type ShaftPose } from "../../geometry/index.js";
import type { Radians } from "../../units/index.js";
import type { Topology } from "./topology.js";

/** Every number behind a record, in readable form; a draw writes it anew. Metres and radians, power order. */
export interface Quantities {
  readonly inclination: number[];
  readonly heading: number[];
  readonly length: number[];
  /** Bearing to joint, one a joint, 0 where none. */
  readonly bearing: number[];
  /** Pivot from the first joint, then mount from the pivot: chain x, z. */
  readonly powertrain: [number, number, number, number];
  arm: number;
  above: number;
  guideError: number;
  padError: number;
  readonly stateError: number[];
}

/** Length that stands in for sections nobody measured: nothing that depends on it is used then. */
export const STAND_IN_LENGTH = 1;

/** Writes one record. */
export function writeRecord({ joints: n, layout }: Topology, from: Quantities, record: Float64Array, at: number): void {
  const pose = (s: number): ShaftPose => ({ inclination: from.inclination[s] as Radians, heading: from.heading[s] as Radians });
  const source = directionOf(pose(0));
  record[at + layout.source] = source.x;
  record[at + layout.source + 1] = source.y;
  record[at + layout.source + 2] = source.z;
  const pinion = pose(n);
  record[at + layout.pinion] = Math.sin(pinion.inclination);
  record[at + layout.pinion + 1] = Math.cos(pinion.inclination);
  record[at + layout.pinion + 2] = Math.sin(pinion.heading);
  record[at + layout.pinion + 3] = Math.cos(pinion.heading);
  for (let k = 0; k < 4; k++) record[at + layout.powertrain + k] = from.powertrain[k] as number;
  record[at + layout.arm] = from.arm;
  record[at + layout.arm + 1] = from.above;
  record[at + layout.guideError] = from.guideError;
  record[at + layout.padError] = from.padError;
  const centre = [0, 0, 0];
  for (let j = 0; j < n; j++) {
    for (let axis = 0; axis < 3; axis++) record[at + layout.centres + 3 * j + axis] = centre[axis] as number;
    record[at + layout.bearings + j] = from.bearing[j] as number;
    if (j === n - 1) break;
    const d = directionOf(pose(j + 1));
    const length = from.length[j] as number;
    record[at + layout.lengths + j] = length;
    [d.x, d.y, d.z].forEach((component, axis) => {
      record[at + layout.sections + 3 * j + axis] = component;
      centre[axis] = (centre[axis] as number) + length * component;
    });
  }
  from.stateError.forEach((error, s) => {
    record[at + layout.stateErrors + s] = error;
  });
}
