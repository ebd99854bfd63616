/**
 * What a set of changes does to one driveline in one state, as a flat row that the search rewrites in place.
 * The amounts are certain; the errors that go with them stand in the record of the draw.
 */
export const MOVE = {
  /** Spacer at the powertrain mount, metres. */
  spacer: 0,
  /** Turn of the pinion, nose up: wedges, pitch of the axle, wind-up. */
  turn: 1,
  /** Travel over which the axle's guides were relied on, metres: it carries their error. */
  guideTravel: 2,
  /** Shift of the axle centre, chain X and Z. */
  axleX: 3,
  axleZ: 4,
  /** Shift by wedge thickness, along the pinion's heading and up: it carries the pad's error. */
  padAlong: 5,
  padUp: 6,
  /** Not 0 where the axle's guides cannot reach. */
  outOfReach: 7,
  /** Support moves (y, z) for every joint, ends unused; then cosine and sine of every section's phasing. */
  supports: 8,
} as const;

/** Numbers in a move of a driveline of `joints` joints. */
export const moveSize = (joints: number): number => MOVE.supports + 2 * joints + 2 * (joints - 1);

/** Where the phasings start. */
export const phasingsAt = (joints: number): number => MOVE.supports + 2 * joints;
