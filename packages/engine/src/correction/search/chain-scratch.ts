import { poseOf, vec3 } from "../../geometry/index.js";
import { doubleCrossJoint, type Joint } from "../../kinematics/index.js";

/** Joint maps and angles of one chain, flat and written over at each call: the inner loop of the search. Numbers as in kinematics' `crossJoint`. */
export interface ChainScratch {
  /** sin i, cos i, sin h, cos h of every shaft. */
  readonly shafts: Float64Array;
  /** pRe, pIm, qRe, qIm of every joint. */
  readonly maps: Float64Array;
  readonly sines: Float64Array;
  readonly cosines: Float64Array;
  /** Source arm to the source-end yoke of section k; the last is the whole chain. */
  readonly fromSource: Float64Array;
  /** Driven-end yoke of section k - 1 to the driven end. */
  readonly toDriven: Float64Array;
}

/** Room for a chain of so many joints (1 to 6), all nought. */
export const newChainScratch = (joints: number): ChainScratch => ({
  shafts: new Float64Array(4 * (joints + 1)),
  maps: new Float64Array(4 * joints),
  sines: new Float64Array(joints),
  cosines: new Float64Array(joints),
  fromSource: new Float64Array(4 * joints),
  toDriven: new Float64Array(4 * joints),
});

/** Which way each joint's map is made. */
export const CROSS = 0;
export const UNIFORM = 1;
export const CENTRED = 2;
export type MapKind = typeof CROSS | typeof UNIFORM | typeof CENTRED;

/** CROSS, UNIFORM (ball, coupling, double cross with equal halves) or CENTRED (double cross with centring geometry). */
export function mapKind(joint: Joint): MapKind {
  if (joint.kind === "cross") return CROSS;
  return joint.kind === "double-cross" && joint.centring ? CENTRED : UNIFORM;
}

/** Fills angles and maps of all joints from unit directions (3 (n + 1)). */
export function jointMaps(joints: readonly Joint[], kinds: readonly MapKind[], directions: Float64Array, out: ChainScratch): void {
  const { shafts, maps, sines, cosines } = out;
  for (let s = 0; s <= joints.length; s++) {
    const x = directions[3 * s] as number;
    const y = directions[3 * s + 1] as number;
    const level = Math.sqrt(x * x + y * y);
    shafts[4 * s] = -(directions[3 * s + 2] as number);
    shafts[4 * s + 1] = level;
    shafts[4 * s + 2] = y / level;
    shafts[4 * s + 3] = x / level;
  }
  for (let k = 0; k < joints.length; k++) {
    const sinA = shafts[4 * k] as number;
    const cosA = shafts[4 * k + 1] as number;
    const sinB = shafts[4 * k + 4] as number;
    const cosB = shafts[4 * k + 5] as number;
    const sinTurn =
      (shafts[4 * k + 6] as number) * (shafts[4 * k + 3] as number) - (shafts[4 * k + 7] as number) * (shafts[4 * k + 2] as number);
    const cosTurn =
      (shafts[4 * k + 7] as number) * (shafts[4 * k + 3] as number) + (shafts[4 * k + 6] as number) * (shafts[4 * k + 2] as number);
    const versine = (sinTurn * sinTurn) / (1 + cosTurn);
    const sinDifference = sinB * cosA - cosB * sinA;
    const maRe = sinDifference + cosB * sinA * versine;
    const maIm = cosB * sinTurn;
    const mbRe = sinDifference - cosA * sinB * versine;
    const mbIm = cosA * sinTurn;
    const cosAngle = cosA * cosB * cosTurn + sinA * sinB;
    sines[k] = Math.sqrt(maRe * maRe + maIm * maIm);
    cosines[k] = cosAngle;
    const pRe = -0.5 * (sinA + sinB) * sinTurn;
    const pIm = 0.5 * (cosTurn * (1 + sinA * sinB) + cosA * cosB);
    const m = 4 * k;
    if (kinds[k] === CROSS) {
      const half = 0.5 / (1 + cosAngle);
      maps[m] = pRe;
      maps[m + 1] = pIm;
      maps[m + 2] = -half * (maRe * mbIm + maIm * mbRe);
      maps[m + 3] = half * (maRe * mbRe - maIm * mbIm);
    } else if (kinds[k] === UNIFORM) {
      const size = Math.sqrt(pRe * pRe + pIm * pIm);
      maps[m] = pIm / size;
      maps[m + 1] = -pRe / size;
      maps[m + 2] = 0;
      maps[m + 3] = 0;
    } else {
      centredMap(joints[k] as Joint, directions, k, maps);
    }
  }
}

/** A double cross joint with centring geometry is rare: it takes the readable way. */
function centredMap(joint: Joint, directions: Float64Array, k: number, maps: Float64Array): void {
  const pose = (s: number) => poseOf(vec3(directions[3 * s] as number, directions[3 * s + 1] as number, directions[3 * s + 2] as number));
  const { map } = doubleCrossJoint(pose(k), pose(k + 1), joint.centring);
  maps[4 * k] = map.pRe;
  maps[4 * k + 1] = map.pIm;
  maps[4 * k + 2] = map.qRe;
  maps[4 * k + 3] = map.qIm;
}

/** The chains from the source up to each joint; `phasings` holds cosine and sine of every section's phasing from `at` on. */
export function chainFromSource(n: number, phasings: Float64Array, at: number, { maps, fromSource }: ChainScratch): void {
  for (let k = 0; k < 4; k++) fromSource[k] = maps[k] as number;
  for (let k = 1; k < n; k++) {
    const c = phasings[at + 2 * k - 2] as number;
    const s = phasings[at + 2 * k - 1] as number;
    const f = 4 * k - 4;
    // A turn multiplies both parts: R (p a + q conj a).
    const e = c * (fromSource[f] as number) - s * (fromSource[f + 1] as number);
    const g = c * (fromSource[f + 1] as number) + s * (fromSource[f] as number);
    const h = c * (fromSource[f + 2] as number) - s * (fromSource[f + 3] as number);
    const i = c * (fromSource[f + 3] as number) + s * (fromSource[f + 2] as number);
    product(maps, 4 * k, e, g, h, i, fromSource, 4 * k);
  }
}

/** The chains from each joint on to the driven end. */
export function chainToDriven(n: number, phasings: Float64Array, at: number, { maps, toDriven }: ChainScratch): void {
  const last = 4 * (n - 1);
  for (let k = 0; k < 4; k++) toDriven[last + k] = maps[last + k] as number;
  for (let k = n - 2; k >= 0; k--) {
    const c = phasings[at + 2 * k] as number;
    const s = phasings[at + 2 * k + 1] as number;
    const m = 4 * k;
    const e = c * (maps[m] as number) - s * (maps[m + 1] as number);
    const g = c * (maps[m + 1] as number) + s * (maps[m] as number);
    const h = c * (maps[m + 2] as number) - s * (maps[m + 3] as number);
    const i = c * (maps[m + 3] as number) + s * (maps[m + 2] as number);
    product(toDriven, 4 * k + 4, e, g, h, i, toDriven, m);
  }
}

/** out = (p, q at `at` of `second`) after (e + ig, h + ii): kinematics' `compose`, flat. */
function product(second: Float64Array, at: number, e: number, g: number, h: number, i: number, out: Float64Array, to: number): void {
  const a = second[at] as number;
  const b = second[at + 1] as number;
  const c = second[at + 2] as number;
  const d = second[at + 3] as number;
  out[to] = a * e - b * g + c * h + d * i;
  out[to + 1] = a * g + b * e + d * h - c * i;
  out[to + 2] = a * h - b * i + c * e + d * g;
  out[to + 3] = a * i + b * h + d * e - c * g;
}
