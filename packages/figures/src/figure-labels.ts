import type { Verdict } from "@halfturn/engine/analysis";
import type { JointKind } from "@halfturn/engine/kinematics";
import type { CommonPart } from "@halfturn/words";
import type { VibrationLabels } from "./vibration/vibration-labels.js";

/** How the language of the reader writes numbers. Angles in degrees, accelerations in rad/s2. */
export interface FigureNumbers {
  readonly plain: (value: number, decimals: number) => string;
  readonly angle: (degrees: number) => string;
  /** Value and half width of its 95 % interval. */
  readonly angleWithin: (degrees: number, halfWidth: number) => string;
  readonly angleInterval: (low: number, high: number) => string;
  readonly acceleration: (radiansPerSecondSquared: number) => string;
  readonly speed: (rpm: number) => string;
  /** Unit in which the reader has road speeds. */
  readonly speedUnit: "km/h" | "mph";
}

/** Which side of the vehicle something is on, facing forward. */
export type VehicleSide = "left" | "right";

/** Every word a figure writes. The figures themselves know no language. */
export interface FigureLabels {
  readonly numbers: FigureNumbers;
  readonly verdicts: { readonly [V in Verdict]: string };
  readonly jointKinds: { readonly [K in JointKind]: string };
  readonly notKnown: string;
  readonly notGauged: string;
  readonly level: string;
  readonly straight: string;
  readonly drivenEndLower: string;
  readonly sourceEndLower: string;
  readonly supportBearing: string;
  readonly forward: string;
  readonly ground: string;

  readonly sideView: string;
  readonly planView: string;
  readonly seenFrom: { readonly [S in VehicleSide]: string };
  readonly seenFromAbove: string;
  readonly trueToScale: string;
  readonly notToScale: string;
  /** The twin picture: by what factor its angles are drawn larger. */
  readonly anglesLarger: (factor: number) => string;
  /** From above: which side of the vehicle the upper edge of the picture is. */
  readonly upperEdgeIs: { readonly [S in VehicleSide]: string };
  readonly towardSide: { readonly [S in VehicleSide]: string };
  readonly notMeasured: string;

  readonly comparisonView: string;

  readonly phasingView: string;
  readonly phasing: string;
  readonly bestPhasing: string;
  readonly phasingAsBest: string;
  readonly phasingNotKnown: string;
  readonly noSection: string;
  readonly sourceEndYoke: string;
  readonly drivenEndYoke: string;
  readonly seenFromSource: string;

  readonly accelerationChart: string;
  readonly shaftSpeedAxis: string;
  readonly accelerationAxis: string;
  readonly drivenEnd: string;
  readonly sourceOnCoast: string;
  readonly driveMotion: string;
  readonly coastMotion: string;
  readonly limitWarn: string;
  readonly limitOver: string;
  readonly bandIs95: string;

  readonly transmissionErrorChart: string;
  readonly sourceTurnAxis: string;
  readonly errorAxis: string;
  readonly twiceATurn: string;
  readonly peakToPeak: string;

  readonly cancellationView: string;
  readonly contributionOf: (joint: string, angle: string) => string;
  readonly whatIsLeft: string;
  readonly exactEquivalentAngle: string;
  /** Why the arrow and the exact number may differ a little. */
  readonly arrowsAreNearly: string;
  readonly nothingToCancel: string;
  readonly noContribution: string;

  readonly orderChart: string;
  readonly roadSpeedAxis: (unit: string) => string;
  readonly frequencyAxis: string;
  /** Short, for the ends of lines. */
  readonly turningParts: { readonly [P in CommonPart]: string };
  /** At which speed the numbers at line ends are frequencies. */
  readonly numbersAt: (speed: string) => string;
  readonly shadedComplaint: (from: string, to: string) => string;

  readonly vibration: VibrationLabels;

  /** "name: what", for the description read aloud. */
  readonly item: (name: string, what: string) => string;
}
