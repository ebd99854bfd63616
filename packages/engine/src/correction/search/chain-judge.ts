import { phasingsAt } from "../geometry/move-layout.js";
import { accelerationOf, type ChainLimits, equivalentOf, type LimitKind, type LimitUse } from "./chain-limits.js";
import { CENTRED, type ChainScratch, chainFromSource, chainToDriven, jointMaps, UNIFORM } from "./chain-scratch.js";

/**
 * By how much each shaft may still turn among the candidates that one evaluation stands for; radians, n + 1 of them. All nought = one candidate.
 * `angles[k]` widens joint k's limits, `weights[k]` and `square` bound the change of the chain's map (see `exceeds`).
 */
export interface Slack {
  readonly none: boolean;
  readonly angles: Float64Array;
  readonly weights: Float64Array;
  readonly square: number;
}

/** No slack: the test is exact. */
export const exactly = (joints: number): Slack => ({
  none: true,
  angles: new Float64Array(joints),
  weights: new Float64Array(joints),
  square: 0,
});

/** Sums of sines and roundings stay far below this, which is far below any gauge: a bound must never prune by rounding. */
const ROUNDING = 1e-11;
/** Above this sine the bound used for constant-velocity joints is not proven; such a chain's map is then not bounded. */
const PROVEN_SINE = 0.8;

/** Slack for shafts that may each turn by up to `turns[s]`. */
export function slackFor(turns: ArrayLike<number>, limits: ChainLimits): Slack {
  const n = limits.joints.length;
  const angles = new Float64Array(n);
  const weights = new Float64Array(n);
  let square = 0;
  for (let k = 0; k < n; k++) {
    angles[k] = (turns[k] as number) + (turns[k + 1] as number) + ROUNDING;
    weights[k] = (limits.kinds[k] === UNIFORM ? 2 : 1) * (angles[k] as number);
  }
  for (let s = 0; s <= n; s++) square += (turns[s] as number) ** 2;
  return { none: false, angles, weights, square };
}

/**
 * Whether some limit is exceeded at the given directions and at every chain whose shafts each differ by no more than the slack.
 *
 * Why that is certain. A joint's angle is a distance on the sphere of directions, so it changes by no more than its two shafts turn (triangle inequality).
 * For the chain: a cross joint is J a = d_out x a. Turn one shaft from d to d' by e, and carry its plane along by the smallest rotation Q; phasings go along
 * unchanged. Then J on either side changes by P(Q - 1) on unit arms of a plane inclined by the joint's angle B: a part of size sin e sin B from the arm's
 * component along d, and one of size 1 - cos e, each of rank one. A rank-one map of size r has |p| = |q| = r/2, every J has norm 1 at most, so moving all
 * shafts one after another changes |p| and |q| of any part of the chain by no more than half of S = sum over joints of w (sin B + w) + sum over shafts of e^2,
 * with w the turn of the joint's two shafts together (B itself may grow by w on the way). A constant-velocity joint changes only by the turn of the spherical
 * triangle, below sin B e while sin B < 0.8; not of rank one, it counts twice. So |q| - limit |p| > S (1 + limit) / 2 leaves no way back within the limit.
 */
export function exceeds(limits: ChainLimits, directions: Float64Array, move: Float64Array, slack: Slack, scratch: ChainScratch): boolean {
  const n = limits.joints.length;
  const { sines, cosines, fromSource, toDriven } = scratch;
  jointMaps(limits.joints, limits.kinds, directions, scratch);
  let change = slack.square;
  let bounded = true;
  for (let k = 0; k < n; k++) {
    const sine = sines[k] as number;
    const angle = Math.atan2(sine, cosines[k] as number);
    const spare = slack.angles[k] as number;
    if (angle - spare > (limits.maximum[k] as number) || angle + spare < (limits.minimum[k] as number)) return true;
    const weight = slack.weights[k] as number;
    change += weight * (sine + weight);
    const kind = limits.kinds[k];
    if (kind === CENTRED || (kind === UNIFORM && sine + weight > PROVEN_SINE)) bounded = false;
  }
  if (!slack.none && !bounded) return false;

  const at = phasingsAt(n);
  chainFromSource(n, move, at, scratch);
  if (limits.knowsWhole && beyond(fromSource, 4 * (n - 1), limits.unevenWhole, change)) return true;
  for (let k = 0; k < n - 1; k++) if (limits.knowsDrive[k] && beyond(fromSource, 4 * k, limits.unevenDrive, change)) return true;
  chainToDriven(n, move, at, scratch);
  for (let k = 1; k < n; k++) if (limits.knowsCoast[k - 1] && beyond(toDriven, 4 * k, limits.unevenCoast, change)) return true;
  return false;
}

function beyond(maps: Float64Array, at: number, limit: number, change: number): boolean {
  const p = Math.sqrt((maps[at] as number) ** 2 + (maps[at + 1] as number) ** 2);
  const q = Math.sqrt((maps[at + 2] as number) ** 2 + (maps[at + 3] as number) ** 2);
  return q - limit * p > (change * (1 + limit)) / 2;
}

const unevenness = (maps: Float64Array, at: number): number =>
  Math.sqrt((maps[at + 2] as number) ** 2 + (maps[at + 3] as number) ** 2) /
  Math.sqrt((maps[at] as number) ** 2 + (maps[at + 1] as number) ** 2);

/** Visits every limit: kind, index of its joint or section (-1 = the whole), value, bound, margin. */
type Visit = (limit: LimitKind, index: number, value: number, bound: number, margin: number) => void;

function visitLimits(limits: ChainLimits, directions: Float64Array, move: Float64Array, scratch: ChainScratch, visit: Visit): void {
  const n = limits.joints.length;
  jointMaps(limits.joints, limits.kinds, directions, scratch);
  const over = (limit: LimitKind, index: number, value: number, bound: number): void =>
    visit(limit, index, value, bound, 1 - value / bound);
  for (let k = 0; k < n; k++) {
    const angle = Math.atan2(scratch.sines[k] as number, scratch.cosines[k] as number);
    const least = limits.minimum[k] as number;
    over("joint-over", k, angle, limits.maximum[k] as number);
    if (least > 0) visit("joint-under", k, angle, least, angle / least - 1);
  }
  const at = phasingsAt(n);
  chainFromSource(n, move, at, scratch);
  chainToDriven(n, move, at, scratch);
  if (limits.knowsWhole) {
    const whole = unevenness(scratch.fromSource, 4 * (n - 1));
    over("equivalent-angle", -1, equivalentOf(whole), limits.equivalentMaximum);
    over("driven-acceleration", -1, accelerationOf(whole, limits.speed), limits.drivenMaximum);
  }
  for (let k = 0; k < n - 1; k++) {
    if (limits.knowsDrive[k])
      over("inertia-drive", k, accelerationOf(unevenness(scratch.fromSource, 4 * k), limits.speed), limits.driveMaximum);
    if (limits.knowsCoast[k])
      over("inertia-coast", k, accelerationOf(unevenness(scratch.toDriven, 4 * k + 4), limits.speed), limits.coastMaximum);
  }
}

/**
 * The smallest share of any limit that is left, at most 1; negative = some limit is exceeded. The least of `limitUses`' margins without making them:
 * of several parts under one limit only the most uneven counts.
 */
export function marginOf(limits: ChainLimits, directions: Float64Array, move: Float64Array, scratch: ChainScratch): number {
  const n = limits.joints.length;
  jointMaps(limits.joints, limits.kinds, directions, scratch);
  let least = Number.POSITIVE_INFINITY;
  for (let k = 0; k < n; k++) {
    const angle = Math.atan2(scratch.sines[k] as number, scratch.cosines[k] as number);
    const minimum = limits.minimum[k] as number;
    least = Math.min(least, 1 - angle / (limits.maximum[k] as number));
    if (minimum > 0) least = Math.min(least, angle / minimum - 1);
  }
  const at = phasingsAt(n);
  chainFromSource(n, move, at, scratch);
  chainToDriven(n, move, at, scratch);
  let drive = -1;
  let coast = -1;
  for (let k = 0; k < n - 1; k++) {
    if (limits.knowsDrive[k]) drive = Math.max(drive, unevenness(scratch.fromSource, 4 * k));
    if (limits.knowsCoast[k]) coast = Math.max(coast, unevenness(scratch.toDriven, 4 * k + 4));
  }
  if (limits.knowsWhole) {
    const whole = unevenness(scratch.fromSource, 4 * (n - 1));
    least = Math.min(
      least,
      1 - equivalentOf(whole) / limits.equivalentMaximum,
      1 - accelerationOf(whole, limits.speed) / limits.drivenMaximum,
    );
  }
  if (drive >= 0) least = Math.min(least, 1 - accelerationOf(drive, limits.speed) / limits.driveMaximum);
  return coast >= 0 ? Math.min(least, 1 - accelerationOf(coast, limits.speed) / limits.coastMaximum) : least;
}

/** Every limit with what is used of it. `sections` names them in power order. */
export function limitUses(
  limits: ChainLimits,
  directions: Float64Array,
  move: Float64Array,
  scratch: ChainScratch,
  names: { readonly driveline: string; readonly sections: readonly string[] },
): readonly LimitUse[] {
  const uses: LimitUse[] = [];
  visitLimits(limits, directions, move, scratch, (limit, index, value, bound, margin) => {
    const jointLimit = limit === "joint-over" || limit === "joint-under";
    const of = index < 0 ? names.driveline : jointLimit ? (limits.joints[index]?.id ?? "") : (names.sections[index] ?? "");
    uses.push({ limit, of, value, bound, margin });
  });
  return uses;
}
