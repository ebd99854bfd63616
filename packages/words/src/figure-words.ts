import type { VehicleSide } from "@halfturn/casefile";

/** Words that stand in figures only; labels that other places share are taken from there. */
export interface FigureWords {
  readonly straight: string;
  readonly forward: string;
  readonly ground: string;
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
  readonly phasingView: string;
  readonly phasingAsBest: string;
  readonly phasingNotKnown: string;
  readonly noSection: string;
  readonly sourceEndYoke: string;
  readonly drivenEndYoke: string;
  readonly seenFromSource: string;
  readonly accelerationChart: string;
  readonly shaftSpeedAxis: string;
  readonly accelerationAxis: string;
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
  readonly arrowsAreNearly: string;
  readonly nothingToCancel: string;
  readonly noContribution: string;
  readonly item: (name: string, what: string) => string;
}
