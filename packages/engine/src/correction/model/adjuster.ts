import type { Metres, Radians } from "../../units/index.js";
import type { Stock } from "./stock.js";

interface Common<Kind extends string> {
  readonly kind: Kind;
  readonly id: string;
  /** What using it costs in labour, in any one measure kept through the case, >= 0. */
  readonly labour: number;
  /** What its parts cost in the same measure, >= 0. */
  readonly parts: number;
  readonly stock: Stock;
  /** Place in the case file: `adjusters[0]`. */
  readonly path: string;
}

interface OnDriveline {
  readonly drivelineId: string;
}

/** Wedge between spring and axle. Amount in radians, + = pinion nose up (the pinion's inclination grows on either axle). */
export interface AxleWedge extends Common<"axle-wedge">, OnDriveline {
  /** Wedge fitted now, signed as the amount. */
  readonly fitted: Radians;
  /** Length of the spring pad along the vehicle; null = not measured. */
  readonly padLength: Metres | null;
  /** Thickness of the wedge's thin edge. */
  readonly thinEdge: Metres;
}

/** Spacer at a support bearing. Amount in metres, + = bearing lowered. */
export interface SupportDrop extends Common<"support-drop">, OnDriveline {
  readonly jointId: string;
  readonly fitted: Metres;
}

/** Support bearing moved sideways. Amount in metres, + = toward vehicle left. */
export interface SupportShift extends Common<"support-shift">, OnDriveline {
  readonly jointId: string;
  readonly fitted: Metres;
}

/** Spacer at the powertrain's rear mount. Amount in metres, + = rear of the powertrain raised. Moves the first joint of every driveline. */
export interface MountSpacer extends Common<"mount-spacer"> {
  readonly fitted: Metres;
}

/** Body raised or lowered over the axle. Amount in metres, + = body raised. */
export interface RideHeightChange extends Common<"ride-height">, OnDriveline {
  /** Nose-up turn of the pinion for each metre that the body rises; null = from the axle's guides. */
  readonly pitchPerMetre: number | null;
}

/** One half of a section turned on its spline. Amount in whole spline steps, + = driven-end yoke turned right-hand about the power flow. */
export interface Rephase extends Common<"rephase">, OnDriveline {
  readonly sectionId: string;
  readonly splineTeeth: number;
}

/** An axle link made longer or shorter. Amount in metres, + = longer. */
export interface LinkLength extends Common<"link-length">, OnDriveline {
  readonly link: "lower" | "upper";
  /** Nose-up turn of the pinion for each metre; null = from the links' ends. */
  readonly pitchPerMetre: number | null;
}

export type Adjuster = AxleWedge | SupportDrop | SupportShift | MountSpacer | RideHeightChange | Rephase | LinkLength;
export type AdjusterKind = Adjuster["kind"];

/** Every kind, in the order in which they are offered. */
export const ADJUSTER_KINDS = [
  "axle-wedge",
  "support-drop",
  "support-shift",
  "mount-spacer",
  "ride-height",
  "rephase",
  "link-length",
] as const satisfies readonly AdjusterKind[];

export type AmountUnit = "rad" | "m" | "step";

/** The unit in which an adjuster's amounts are written in the engine. */
export const amountUnit = (kind: AdjusterKind): AmountUnit => (kind === "axle-wedge" ? "rad" : kind === "rephase" ? "step" : "m");

/** One adjuster used by some amount, against what stands now. */
export interface Change {
  readonly adjusterId: string;
  readonly amount: number;
}
