import { add, angleBetween, cross, length, negative, scale, turnAbout, unit, type Vector } from "./vectors.js";

/**
 * The motion of a chain of cross joints in a form of its own: with z = exp(2 j theta), theta counted from the normal of the joint's two shafts, a joint is the
 * map z -> (z + k)/(1 + k z) of the unit circle, k = tan^2(b/2); the shaft to the next joint turns it by -exp(2 j (phasing - gamma)), gamma the angle between
 * the normals of both its joints. (tan of the driven angle = cos b tan of the driving one, Dana/GWB cardan catalogue, both counted a quarter turn apart.)
 * The maps are multiplied as complex 2x2 matrices. Directions and normals are vectors; no inclination or heading appears.
 */
interface Complex {
  readonly re: number;
  readonly im: number;
}
type Moebius = readonly [p: Complex, q: Complex, r: Complex, s: Complex];

const times = (a: Complex, b: Complex): Complex => ({ re: a.re * b.re - a.im * b.im, im: a.re * b.im + a.im * b.re });
const plus = (a: Complex, b: Complex): Complex => ({ re: a.re + b.re, im: a.im + b.im });
const over = (a: Complex, b: Complex): Complex => {
  const size = b.re * b.re + b.im * b.im;
  return { re: (a.re * b.re + a.im * b.im) / size, im: (a.im * b.re - a.re * b.im) / size };
};
const onCircle = (angle: number): Complex => ({ re: Math.cos(angle), im: Math.sin(angle) });
const size = ({ re, im }: Complex): number => Math.hypot(re, im);
const ZERO: Complex = { re: 0, im: 0 };
const ONE: Complex = { re: 1, im: 0 };

const after = ([a, b, c, d]: Moebius, [e, f, g, h]: Moebius): Moebius => [
  plus(times(a, e), times(b, g)),
  plus(times(a, f), times(b, h)),
  plus(times(c, e), times(d, g)),
  plus(times(c, f), times(d, h)),
];

/** Normal of a joint; for shafts in line any direction across them will do, since nothing then depends on it. */
function normalOf(a: Vector, b: Vector): Vector {
  const product = cross(a, b);
  return length(product) > 0 ? unit(product) : unit(cross(a, Math.abs(a[0]) < 0.9 ? [1, 0, 0] : [0, 1, 0]));
}

/** tan^2(b/2) = (sin b / (1 + cos b))^2, without a difference of near numbers. */
const unevenness = (a: Vector, b: Vector): number => Math.tan(angleBetween(a, b) / 2) ** 2;

/** The motion from the first shaft of a list to its last. */
export class SecondFormulation {
  private readonly map: Moebius;
  /** Right-hand turn about the first shaft from its joint's normal to the arm that drives it, for the arm's turn t = 0. */
  private readonly firstNormal: Vector;

  /** directions: n + 1 unit vectors in power order. phasings: n - 1, in radians, right-hand about their section. */
  constructor(
    private readonly directions: readonly Vector[],
    phasings: readonly number[],
  ) {
    const normals = directions.slice(1).map((b, k) => normalOf(directions[k] as Vector, b));
    this.firstNormal = normals[0] as Vector;
    this.map = normals.reduce<Moebius>(
      (before, normal, k) => {
        const [a, b] = [directions[k] as Vector, directions[k + 1] as Vector];
        const uneven = { re: unevenness(a, b), im: 0 };
        const through = after([ONE, uneven, uneven, ONE], before);
        const next = normals[k + 1];
        if (!next) return through;
        const gamma = turnAbout(b, across(normal, b), across(next, b));
        return after([onCircle(2 * ((phasings[k] as number) - gamma) + Math.PI), ZERO, ZERO, ONE], through);
      },
      [ONE, ZERO, ZERO, ONE],
    );
  }

  /** Angle of the one cross joint that moves alike, in radians: tan^2(b/2) = |q/p|. */
  get equivalentAngle(): number {
    return 2 * Math.atan(Math.sqrt(size(this.map[1]) / size(this.map[0])));
  }

  /** The last shaft's lead in radians, zero mean, when the first one's arm has turned by t from `reference`, which lies across it. */
  leadFrom(reference: Vector, t: number): number {
    const first = this.directions[0] as Vector;
    return this.lead(t - turnAbout(first, reference, across(this.firstNormal, first)));
  }

  /** Greatest less least lead, in radians, by search. */
  get peakToPeak(): number {
    return greatest((theta) => this.lead(theta)) + greatest((theta) => -this.lead(theta));
  }

  /** Greatest angular acceleration of the last shaft over squared speed of the first, by search over the exact derivative. */
  get accelerationCoefficient(): number {
    return greatest((theta) => this.acceleration(theta));
  }

  /** Half the angle of z' / z, less its constant part: (1 + (q/p)/z) / (1 + (r/s) z). */
  private lead(theta: number): number {
    const [p, q, r, s] = this.map;
    const above = plus(ONE, times(over(q, p), onCircle(-2 * theta)));
    const below = plus(ONE, times(over(r, s), onCircle(2 * theta)));
    const { re, im } = over(above, below);
    return Math.atan2(im, re) / 2;
  }

  /** The ratio is |p s - q r| / |r z + s|^2; this is its derivative by theta. */
  private acceleration(theta: number): number {
    const [p, q, r, s] = this.map;
    const z = onCircle(2 * theta);
    const turning = times(r, z);
    const below = plus(turning, s);
    const product = times(q, r);
    const determinant = size(plus(times(p, s), { re: -product.re, im: -product.im }));
    // d/dtheta |r z + s|^2 = 2 Re(conj(r z + s) 2 j r z).
    const slope = 4 * (below.im * turning.re - below.re * turning.im);
    return (-determinant * slope) / (below.re ** 2 + below.im ** 2) ** 2;
  }
}

/** A vector's part across a unit vector. Both normals of a shaft are across it but for rounding, which counts where a joint is nearly straight. */
const across = (v: Vector, axis: Vector): Vector => add(v, scale(axis, -(v[0] * axis[0] + v[1] * axis[1] + v[2] * axis[2])));

const GRID = 360;
const GOLDEN = (Math.sqrt(5) - 1) / 2;
/** Golden section narrows two grid steps to a few 1e-9 in this many rounds; a maximum is then right to its square. */
const ROUNDS = 36;

/** Greatest value of a smooth function of period pi. */
function greatest(f: (theta: number) => number): number {
  const at = Array.from({ length: GRID }, (_, k) => f((Math.PI * k) / GRID));
  const best = at.indexOf(Math.max(...at));
  let [low, high] = [(Math.PI * (best - 1)) / GRID, (Math.PI * (best + 1)) / GRID];
  let [inner, outer] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  let [left, right] = [f(inner), f(outer)];
  for (let round = 0; round < ROUNDS; round++) {
    if (left < right) {
      [low, inner, left] = [inner, outer, right];
      outer = low + GOLDEN * (high - low);
      right = f(outer);
    } else {
      [high, outer, right] = [outer, inner, left];
      inner = high - GOLDEN * (high - low);
      left = f(inner);
    }
  }
  return Math.max(left, right, at[best] as number);
}

/** The chain run backwards: the same shafts from the far end, looking the other way, under which a phasing keeps its sign. */
export const coasting = (directions: readonly Vector[], phasings: readonly number[]): SecondFormulation =>
  new SecondFormulation([...directions].reverse().map(negative), [...phasings].reverse());

/** What drives and what coasts in a chain of n joints: each section from the source, each from the driven end, and the whole. */
export function secondFormulation(directions: readonly Vector[], phasings: readonly number[]) {
  const sections = phasings.map((_, s) => s);
  return {
    whole: new SecondFormulation(directions, phasings),
    wholeCoasting: coasting(directions, phasings),
    drive: sections.map((s) => new SecondFormulation(directions.slice(0, s + 2), phasings.slice(0, s))),
    coast: sections.map((s) => coasting(directions.slice(s + 1), phasings.slice(s + 1))),
  };
}
