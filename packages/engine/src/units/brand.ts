/** A number that carries its unit in the type, so that radians cannot pass for metres. The brand exists for the compiler only. */
export type Branded<Unit extends string> = number & { readonly __unit: Unit };

/** Plane angle in radians. */
export type Radians = Branded<"rad">;
/** Length in metres. */
export type Metres = Branded<"m">;
/** Rotational speed in revolutions per minute, the trade's unit; the engine computes with `RadiansPerSecond`. */
export type Rpm = Branded<"rpm">;
/** Angular velocity in radians per second. */
export type RadiansPerSecond = Branded<"rad/s">;
/** Angular acceleration in radians per second squared. */
export type RadiansPerSecondSquared = Branded<"rad/s2">;
/** Torque in newton metres. */
export type NewtonMetres = Branded<"N.m">;
/** Road speed in metres per second. */
export type MetresPerSecond = Branded<"m/s">;

/** Marks a plain number as an angle in radians; nothing is converted. */
export const radians = (value: number): Radians => value as Radians;
/** Marks a plain number as a length in metres; nothing is converted. */
export const metres = (value: number): Metres => value as Metres;
/** Marks a plain number as revolutions per minute; nothing is converted. */
export const rpm = (value: number): Rpm => value as Rpm;
