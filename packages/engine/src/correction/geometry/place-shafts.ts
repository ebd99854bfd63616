import { MOVE } from "./move-layout.js";
import type { Topology } from "./topology.js";

/** Where everything stands after a move. Written over at each call. */
export interface Placement {
  /** Directions of all shafts, 3 (n + 1), unit vectors in the chain frame. */
  readonly directions: Float64Array;
  /** Joint centres, 3 n. */
  readonly centres: Float64Array;
  /** Pulled-out travel of the slip spline, metres, + = longer; sums what every section would have to give. */
  readonly slip: Float64Array;
  /** Scratch: where the supports alone would hold the joints. */
  readonly targets: Float64Array;
}

/** Room for the placement of a driveline of so many joints (1 to 6), all nought. */
export const newPlacement = (joints: number): Placement => ({
  directions: new Float64Array(3 * (joints + 1)),
  centres: new Float64Array(3 * joints),
  slip: new Float64Array(1),
  targets: new Float64Array(3 * joints),
});

/** What stops a placement. 0 = nothing. */
export const PLACED = 0;
export const SPACER_OUT_OF_REACH = 1;
export const SHAFT_OUT_OF_REACH = 2;
export const GUIDE_OUT_OF_REACH = 3;
export type PlacementCode = typeof PLACED | typeof SPACER_OUT_OF_REACH | typeof SHAFT_OUT_OF_REACH | typeof GUIDE_OUT_OF_REACH;

/** A section may not shrink to less than this share of its length: nothing built so could turn. */
const LEAST_SHARE = 0.2;

/**
 * Rigid-body placement of one driveline: record of a draw at `at`, a move, state number `state` (for that state's error of the pinion's turn).
 *
 * The powertrain turns about its pivot by the angle that raises the mount by exactly the spacer. The axle turns about n = (-sin h, cos h, 0) through its
 * centre A, P_last = A - c d + j up, and A shifts. Each inner joint is held by its bearing, which lies on the line of one section. Sections other than the
 * slipping one keep their length: those before it are laid from the source, those after it from the axle (agreed design, section 8). With no move every
 * number is what was gauged. Returns why it cannot stand, or PLACED.
 */
export function placeShafts(
  topology: Topology,
  record: Float64Array,
  at: number,
  move: Float64Array,
  state: number,
  out: Placement,
): PlacementCode {
  const { joints: n, layout } = topology;
  const { directions, centres } = out;
  if (move[MOVE.outOfReach] !== 0) return GUIDE_OUT_OF_REACH;
  for (let k = 0; k < 3 * n; k++) centres[k] = record[at + layout.centres + k] as number;

  if (!placeSource(topology, record, at, move[MOVE.spacer] as number, out)) return SPACER_OUT_OF_REACH;
  placePinion(topology, record, at, move, record[at + layout.stateErrors + state] as number, out);
  out.slip[0] = 0;
  if (!topology.full) {
    for (let k = 0; k < 3 * (n - 1); k++) directions[3 + k] = record[at + layout.sections + k] as number;
    return PLACED;
  }
  holdInnerJoints(topology, record, at, move, out);
  return layRigidSections(topology, record, at, out) ? PLACED : SHAFT_OUT_OF_REACH;
}

/** Turns the source shaft about the powertrain pivot and moves the first joint. False when the mount cannot be raised so far. */
function placeSource(
  { layout, full }: Topology,
  record: Float64Array,
  at: number,
  spacer: number,
  { directions, centres }: Placement,
): boolean {
  const x = record[at + layout.source] as number;
  const y = record[at + layout.source + 1] as number;
  const z = record[at + layout.source + 2] as number;
  if (spacer === 0) {
    directions[0] = x;
    directions[1] = y;
    directions[2] = z;
    return true;
  }
  const pivotX = record[at + layout.powertrain] as number;
  const pivotZ = record[at + layout.powertrain + 1] as number;
  const mountX = record[at + layout.powertrain + 2] as number;
  const mountZ = record[at + layout.powertrain + 3] as number;
  const reach = Math.sqrt(mountX * mountX + mountZ * mountZ);
  // The mount stands at the angle a from vertical, sin a = x/reach, cos a = z/reach; raised it stands where reach cos(a + turn) = z + spacer.
  const cosRaised = (mountZ + spacer) / reach;
  if (!(Math.abs(cosRaised) < 1) || mountX === 0) return false;
  const sinRaised = Math.sign(mountX) * Math.sqrt(1 - cosRaised * cosRaised);
  const cosTurn = (cosRaised * mountZ + sinRaised * mountX) / reach;
  const sinTurn = (sinRaised * mountZ - cosRaised * mountX) / reach;
  directions[0] = x * cosTurn + z * sinTurn;
  directions[1] = y;
  directions[2] = z * cosTurn - x * sinTurn;
  if (full) {
    centres[0] = pivotX - pivotX * cosTurn - pivotZ * sinTurn;
    centres[2] = pivotZ - pivotZ * cosTurn + pivotX * sinTurn;
  }
  return true;
}

/** Turns the pinion about the axle centre, shifts the axle, and moves the last joint with them. */
function placePinion(topology: Topology, record: Float64Array, at: number, move: Float64Array, stateError: number, out: Placement): void {
  const { joints: n, layout, full } = topology;
  const { directions, centres } = out;
  const sinI = record[at + layout.pinion] as number;
  const cosI = record[at + layout.pinion + 1] as number;
  const sinH = record[at + layout.pinion + 2] as number;
  const cosH = record[at + layout.pinion + 3] as number;
  const guide = (record[at + layout.guideError] as number) * (move[MOVE.guideTravel] as number);
  const pad = 1 + (record[at + layout.padError] as number);
  const turn = (move[MOVE.turn] as number) + guide + stateError;
  const cosTurn = Math.cos(turn);
  const sinTurn = Math.sin(turn);
  const sinTurned = sinI * cosTurn + cosI * sinTurn;
  const cosTurned = cosI * cosTurn - sinI * sinTurn;
  const last = 3 * n;
  directions[last] = cosTurned * cosH;
  directions[last + 1] = cosTurned * sinH;
  directions[last + 2] = -sinTurned;
  if (!full) return;

  const arm = record[at + layout.arm] as number;
  const above = record[at + layout.arm + 1] as number;
  const along = arm * (cosI - cosTurned) - above * (sinI - sinTurned) + pad * (move[MOVE.padAlong] as number);
  const up = arm * (sinTurned - sinI) - above * (cosI - cosTurned) + pad * (move[MOVE.padUp] as number);
  const p = 3 * (n - 1);
  centres[p] = (centres[p] as number) + along * cosH + (move[MOVE.axleX] as number);
  centres[p + 1] = (centres[p + 1] as number) + along * sinH;
  centres[p + 2] = (centres[p + 2] as number) + up + (move[MOVE.axleZ] as number);
}

/** Where the bearings hold the inner joints: on the line from the neighbouring joint through the moved bearing, drawn out to the joint by L / (L - b). */
function holdInnerJoints(topology: Topology, record: Float64Array, at: number, move: Float64Array, { centres, targets }: Placement): void {
  const { joints: n, bearingSide } = topology;
  // A loop, because `set` costs more than nine numbers do.
  for (let k = 0; k < 3 * n; k++) targets[k] = centres[k] as number;
  for (let j = 1; j < n - 1; j++) {
    const p = 3 * j;
    targets[p + 1] = (centres[p + 1] as number) + (move[MOVE.supports + 2 * j] as number);
    targets[p + 2] = (centres[p + 2] as number) + (move[MOVE.supports + 2 * j + 1] as number);
  }
  for (let j = 1; j < n - 2; j++) if (bearingSide[j] === 1 && bearingSide[j + 1] === -1) drawThroughBoth(topology, record, at, j, targets);
  for (let j = 1; j < n - 1; j++) if (bearingSide[j] === -1 && bearingSide[j - 1] !== 1) drawOut(topology, record, at, j, -1, targets);
  for (let j = n - 2; j > 0; j--) if (bearingSide[j] === 1 && bearingSide[j + 1] !== -1) drawOut(topology, record, at, j, 1, targets);
}

/** Joint j's target carries the move of its bearing; add what the lever from the neighbour on `side` makes of both moves. */
function drawOut({ layout }: Topology, record: Float64Array, at: number, j: number, side: -1 | 1, targets: Float64Array): void {
  const length = record[at + layout.lengths + (side < 0 ? j - 1 : j)] as number;
  const bearing = record[at + layout.bearings + j] as number;
  const lever = bearing / (length - bearing);
  const neighbour = 3 * (j + side);
  const own = 3 * j;
  for (let axis = 0; axis < 3; axis++) {
    const base = at + layout.centres + axis;
    const ownMove = (targets[own + axis] as number) - (record[base + own] as number);
    const neighbourMove = (targets[neighbour + axis] as number) - (record[base + neighbour] as number);
    targets[own + axis] = (targets[own + axis] as number) + lever * (ownMove - neighbourMove);
  }
}

/** Two bearings on one section hold its line by themselves. */
function drawThroughBoth({ layout }: Topology, record: Float64Array, at: number, j: number, targets: Float64Array): void {
  const first = record[at + layout.bearings + j] as number;
  const second = record[at + layout.bearings + j + 1] as number;
  const between = (record[at + layout.lengths + j] as number) - first - second;
  const a = 3 * j;
  for (let axis = 0; axis < 3; axis++) {
    const base = at + layout.centres + axis + a;
    const moveA = (targets[a + axis] as number) - (record[base] as number);
    const moveB = (targets[a + 3 + axis] as number) - (record[base + 3] as number);
    targets[a + axis] = (targets[a + axis] as number) + (first / between) * (moveA - moveB);
    targets[a + 3 + axis] = (targets[a + 3 + axis] as number) + (second / between) * (moveB - moveA);
  }
}

/** Lays every section but the slipping one at its own length and reads all directions. False when a section would have to shrink to nothing. */
function layRigidSections({ joints: n, slipSection, layout }: Topology, record: Float64Array, at: number, out: Placement): boolean {
  const { directions, centres, targets, slip } = out;
  for (let k = 0; k < slipSection; k++) {
    if (!lay(targets, centres, 3 * k, 3 * (k + 1), record[at + layout.lengths + k] as number, 1, directions, 3 * (k + 1))) return false;
  }
  for (let k = n - 2; k > slipSection; k--) {
    if (!lay(targets, centres, 3 * (k + 1), 3 * k, record[at + layout.lengths + k] as number, -1, directions, 3 * (k + 1))) return false;
  }
  if (slipSection < 0) return true;
  const a = 3 * slipSection;
  const x = (centres[a + 3] as number) - (centres[a] as number);
  const y = (centres[a + 4] as number) - (centres[a + 1] as number);
  const z = (centres[a + 5] as number) - (centres[a + 2] as number);
  const length = Math.sqrt(x * x + y * y + z * z);
  const before = record[at + layout.lengths + slipSection] as number;
  if (!(length > LEAST_SHARE * before) || !(x > 0)) return false;
  directions[a + 3] = x / length;
  directions[a + 4] = y / length;
  directions[a + 5] = z / length;
  slip[0] = length - before;
  return true;
}

/** Lays one rigid section from a placed joint toward the next joint's target; `way` is +1 along the power flow. False where it is shorter than the way across. */
function lay(
  targets: Float64Array,
  centres: Float64Array,
  from: number,
  to: number,
  length: number,
  way: 1 | -1,
  directions: Float64Array,
  d: number,
): boolean {
  const x = (targets[to] as number) - (centres[from] as number);
  const y = (targets[to + 1] as number) - (centres[from + 1] as number);
  const z = (targets[to + 2] as number) - (centres[from + 2] as number);
  const span = Math.sqrt(x * x + y * y + z * z);
  if (!(span > LEAST_SHARE * length) || !(way * x > 0) || !(y * y + z * z < length * length)) return false;
  const share = length / span;
  centres[to] = (centres[from] as number) + x * share;
  centres[to + 1] = (centres[from + 1] as number) + y * share;
  centres[to + 2] = (centres[from + 2] as number) + z * share;
  directions[d] = (way * x) / span;
  directions[d + 1] = (way * y) / span;
  directions[d + 2] = (way * z) / span;
  return true;
}
