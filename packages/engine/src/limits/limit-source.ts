/** Where the built-in limits come from. Words for each stand in the catalogue of every language; the comment says what is known of it. */
export const LIMIT_SOURCES = [
  // From memory: design practice for the inertia of a shaft driven through a joint; widely printed tables of angle against speed imply 855 to 1023 rad/s2.
  "joint-acceleration-practice",
  // Common practice, no source; the maker's figure for the joint goes first.
  "joint-kind-practice",
  // Common practice, no source: needles that never roll dent their races.
  "needles-must-roll",
  "no-minimum-known",
  // From memory: common design practice; Elbe, technical data sheet 3, states a non-uniformity of at most 0.0027, which is 2.98 degrees.
  "non-uniformity-practice",
  // From memory: torsional acceleration in general use.
  "torsional-general-use",
  // From memory: torsional acceleration, upper figure met in practice.
  "torsional-upper-figure",
  // From memory: inertia excitation, driven from the transmission side.
  "inertia-from-source",
  // From memory: inertia excitation, driven from the axle side.
  "inertia-from-axle",
  // Common practice, no source.
  "common-practice",
] as const;

export type LimitSource = (typeof LIMIT_SOURCES)[number];
