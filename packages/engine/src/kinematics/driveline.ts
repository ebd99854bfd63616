import type { Metres, Radians } from "../units/index.js";

/** What a joint does to the motion. `cross`: one Cardan/Hooke joint. `double-cross`: two in one coupling yoke. `ball`: constant velocity. `flexible`: a disc or rubber coupling. */
export type JointKind = "cross" | "double-cross" | "ball" | "flexible";

/**
 * How a double cross joint shares its angle between its two crosses.
 * The ball of the centring device stays at `ballFromCross` from the cross of the shaft it is fixed to and slides on the other; the crosses are `crossesApart`.
 */
export interface Centring {
  readonly crossesApart: Metres;
  readonly ballFromCross: Metres;
  readonly ballFixedTo: "source-side" | "driven-side";
}

export interface Joint {
  readonly id: string;
  readonly kind: JointKind;
  /** Double cross joints only; without it the halves are taken as equal. */
  readonly centring?: Centring;
  /** The largest angle its maker states; for a flexible coupling its motion is unknown beyond it. */
  readonly statedAngle?: Radians;
}

/** A propeller-shaft section between two joints. */
export interface Section {
  readonly id: string;
  /**
   * From the source-end yoke to the driven-end yoke, right-hand about the shaft direction, modulo pi; 0 = yokes in line.
   * null = not known. Beside a ball or flexible joint, which has no yoke, it is counted to a mark carried straight across that joint.
   */
  readonly phasing: Radians | null;
  readonly phasingMeasured: boolean;
  /** Joint centre to joint centre. */
  readonly length?: Metres;
}

/** A driveline in power order: source, joint 1, section 1, joint 2, ..., joint n, driven. n joints carry n - 1 sections; n is 1 to 6. */
export interface Driveline {
  readonly id: string;
  readonly joints: readonly Joint[];
  readonly sections: readonly Section[];
}

/** Ids of all shafts in power order: `source`, every section, `driven`. */
export const shaftIds = (driveline: Driveline): readonly string[] => [
  "source",
  ...driveline.sections.map((section) => section.id),
  "driven",
];
