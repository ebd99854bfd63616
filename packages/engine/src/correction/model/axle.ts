import type { Metres, Radians } from "../../units/index.js";

/** An axle link in the side view, its ends from the axle centre as gauged, vehicle forward and up. */
export interface SideViewLink {
  readonly frameForward: Metres;
  readonly frameUp: Metres;
  readonly axleForward: Metres;
  readonly axleUp: Metres;
}

/** What guides the axle when it moves up and down. */
export type AxleGuide =
  | { readonly kind: "rate" /** Nose-up turn of the pinion for each metre that the body rises. */; readonly pitchPerMetre: number }
  | {
      readonly kind: "leaf";
      /** Fixed eye from the axle centre as gauged. */
      readonly fixedEyeForward: Metres;
      readonly fixedEyeUp: Metres;
      /** Eye at the shackle, forward of the axle centre; null = not measured, the halves are taken as equal. */
      readonly shackleEyeForward: Metres | null;
    }
  | { readonly kind: "links"; readonly lower: SideViewLink; readonly upper: SideViewLink };

export interface Caster {
  readonly value: Radians;
  readonly minimum: Radians;
  readonly maximum: Radians;
}

/** The axle that a driveline ends at. null = not measured or not given. */
export interface Axle {
  /** From the axle centre to the last joint along the pinion. */
  readonly centreToJoint: Metres | null;
  /** How far that joint lies above the axle centre, square to the pinion. */
  readonly jointAboveCentre: Metres;
  readonly springPosition: "above-axle" | "below-axle" | null;
  /** Inclination of the spring pad, signed as a shaft's; 0 where it lies level. */
  readonly padInclination: Radians;
  readonly steered: boolean;
  /** Needed before a wedge is offered on a steered axle. */
  readonly caster: Caster | null;
  /** How far torque turns the pinion: magnitudes under forward drive and on overrun. */
  readonly windUp: { readonly drive: Radians; readonly coast: Radians } | null;
  readonly guide: AxleGuide | null;
}
