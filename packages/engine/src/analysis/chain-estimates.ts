import type { PoseModel } from "../gauging/index.js";
import { benchSigns, type Driveline, disturbingJoints, type Joint, motionScope, nearlyPlanar } from "../kinematics/index.js";
import type { Interval } from "../uncertainty/index.js";
import { uniformDeviates } from "../uncertainty/index.js";
import { degreesToRadians } from "../units/index.js";
import { boundedInterval, regionIncludesZero } from "./bounded-interval.js";
import { magnitudeOf, quantitiesOf, quantityIndex } from "./chain-quantities.js";
import type { Estimate } from "./estimate.js";
import { bestPoses, keptDraws, poseDraws } from "./pose-draws.js";
import { simulateChain } from "./simulate-chain.js";

/** The measuring errors alone only set a correction of an interval's ends, which needs no more draws than this. */
const CORRECTION_DRAWS = 10_000;

/** From here on nothing is said of the motion: no joint turns at a right angle, where its acceleration has no bound. The joint itself is far over any limit. */
const NEAR_RIGHT_ANGLE = degreesToRadians(89);

/** A quantity of the chain as an angle: best value, interval, and the draws behind it for the spread of whatever is computed from it. */
export interface AngleEstimate {
  readonly value: number;
  readonly interval: Interval;
  readonly draws: Float64Array;
}

/** All zero-bounded quantities of a driveline and the draws behind them, in radians; null where the readings or the phasings do not tell, motions also where a joint may stand near a right angle. */
export interface ChainEstimates {
  readonly joints: readonly (AngleEstimate | null)[];
  readonly drive: readonly (AngleEstimate | null)[];
  readonly coast: readonly (AngleEstimate | null)[];
  readonly whole: AngleEstimate | null;
  readonly bench: AngleEstimate | null;
  /** Draws of the inclination and the heading of each shaft in turn, radians. */
  readonly poses: readonly Float64Array[];
}

/** Which joint disturbs the motion over joints [from, to], if it is one cross joint alone: the motion is then that joint's and shares its estimate. */
function loneCross(driveline: Driveline, from: number, to: number): number | null {
  const disturbing = disturbingJoints(driveline, from, to);
  const [only] = disturbing;
  return disturbing.length === 1 && only !== undefined && driveline.joints[only]?.kind === "cross" ? only : null;
}

/** Estimates every quantity of a chain from the error law of its readings. beyond(k): joint k works outside what is known of its motion. */
export function chainEstimates(
  driveline: Driveline,
  model: PoseModel,
  options: { readonly draws: number; readonly seed: number; readonly beyond: (joint: Joint, angle: number) => boolean },
): ChainEstimates {
  const n = driveline.joints.length;
  const index = quantityIndex(n);
  const poses = bestPoses(model);
  const signs = benchSigns(driveline);
  const planar = nearlyPlanar(poses);
  const evaluate = quantitiesOf(driveline, signs);
  const uniform = uniformDeviates(options.seed);
  const { next, columns } = keptDraws(poseDraws(model, uniform, "all"), n + 1, options.draws);
  const sample = simulateChain(n, evaluate, next, options.draws);
  const measured = simulateChain(n, evaluate, poseDraws(model, uniform, "measured"), Math.min(options.draws, CORRECTION_DRAWS));
  const vectors = new Float64Array(2 * index.count);
  evaluate(poses, vectors);

  const cache = new Map<number, AngleEstimate>();
  const at = (place: number): AngleEstimate => {
    const found = cache.get(place);
    if (found) return found;
    const draws = sample.magnitudes[place] as Float64Array;
    const covariance = sample.covariances[place];
    const value = magnitudeOf(n, place, vectors);
    const zero = covariance !== undefined && regionIncludesZero(vectors[2 * place] as number, vectors[2 * place + 1] as number, covariance);
    const made = { value, draws, interval: boundedInterval(value, zero, draws, measured.magnitudes[place] as Float64Array) };
    cache.set(place, made);
    return made;
  };

  const known = (from: number, to: number): boolean => model.inclination.slice(from, to + 1).every((inclination) => inclination !== null);
  const scope = motionScope(driveline);
  // Of a joint past a right angle one draw is enough: a motion built on it would be no number.
  const turns = (place: number): boolean =>
    magnitudeOf(n, place, vectors) < NEAR_RIGHT_ANGLE &&
    (sample.magnitudes[place] as Float64Array).every((angle) => angle < NEAR_RIGHT_ANGLE);
  const motion = (place: number, from: number, to: number, inScope: boolean): AngleEstimate | null => {
    if (!inScope || !known(from, to + 1)) return null;
    const inMotion = driveline.joints.flatMap((joint, k) => (k < from || k > to ? [] : [{ joint, place: index.joint(k) }]));
    if (inMotion.some(({ joint, place: own }) => options.beyond(joint, magnitudeOf(n, own, vectors)) || !turns(own))) return null;
    return turns(place) ? at(loneCross(driveline, from, to) ?? place) : null;
  };
  const allKnown = known(0, n);
  return {
    joints: driveline.joints.map((_, k) => (known(k, k + 1) ? at(index.joint(k)) : null)),
    drive: driveline.sections.map((_, s) => motion(index.drive(s), 0, s, scope.drive[s] === true)),
    coast: driveline.sections.map((_, s) => motion(index.coast(s), s + 1, n - 1, scope.coast[s] === true)),
    whole: motion(index.whole, 0, n - 1, scope.whole),
    bench: signs && planar && allKnown ? at(index.bench) : null,
    poses: columns,
  };
}

/** An estimate of an increasing function of the angle: value and interval go through it, and u is the spread of the draws that do. */
export function estimateOf(angle: AngleEstimate | null, increasing: (angle: number) => number): Estimate | null {
  if (!angle) return null;
  const { draws } = angle;
  let mean = 0;
  let squares = 0;
  for (let draw = 0; draw < draws.length; draw++) {
    const value = increasing(draws[draw] as number);
    const delta = value - mean;
    mean += delta / (draw + 1);
    squares += delta * (value - mean);
  }
  return {
    value: increasing(angle.value),
    u: Math.sqrt(squares / Math.max(1, draws.length - 1)),
    low: increasing(angle.interval.low),
    high: increasing(angle.interval.high),
  };
}
