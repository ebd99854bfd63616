import { Matrix, solve } from "ml-matrix";
import type { PoseModel } from "../../gauging/index.js";
import { poseOf, vec3 } from "../../geometry/index.js";
import { shaftIds } from "../../kinematics/index.js";
import { type CorrectionModel, correctionModel, refusals } from "../geometry/correction-model.js";
import type { GeometrySource } from "../geometry/geometry-source.js";
import { newPlacement, PLACED, placeShafts } from "../geometry/place-shafts.js";
import { copyQuantities } from "../geometry/quantities.js";
import { type Quantities, writeRecord } from "../geometry/record.js";
import { newMoves, writeMoves } from "../geometry/write-moves.js";
import { type Change, type CorrectionInput, failure, type Outcome, success } from "../model/index.js";
import { checkChanges } from "../predict/check-changes.js";
import { sourceKey } from "./apply-learned.js";
import type { LearnedGeometry } from "./learned-geometry.js";

/** One correction that was made: the case as it stood before (its poses are the before gauging), what was changed, and the poses gauged after. */
export interface BeforeAfter {
  readonly before: CorrectionInput;
  readonly changes: readonly Change[];
  /** By driveline id; a driveline that was not gauged again is left out. */
  readonly after: Readonly<Record<string, PoseModel>>;
}

/** Gauss-Newton steps; the law is nearly linear, so two or three would do. */
const ROUNDS = 8;
/** Derivatives are differences over this share of a source's uncertainty. */
const NUDGE = 0.1;
/** Variance below which a reading would count as without error, rad2: a ten-thousandth of a degree. */
const LEAST_VARIANCE = 3e-12;

interface Pair {
  readonly model: CorrectionModel;
  readonly moves: ReturnType<typeof newMoves>;
  readonly gauge: readonly GeometrySource[];
  readonly tape: ReadonlyMap<string, GeometrySource>;
  readonly rows: readonly Row[];
  readonly weights: Matrix;
}

/** One inclination gauged after. */
interface Row {
  readonly driveline: number;
  readonly shaft: number;
  readonly measured: number;
}

/**
 * Re-estimates the case's own arms and lengths from before and after gaugings: least squares of the inclinations gauged after against those predicted, weighed
 * by the uncertainty of both gaugings, with what was taped as prior (maximum a posteriori; JCGM 102:2011 names the linear law, the prior makes it Bayesian).
 * Headings are left out: most are assumed, and the same in both gaugings. Refuses as `predict` does. Shifts in metres.
 */
export function learnGeometry(pairs: readonly BeforeAfter[]): Outcome<LearnedGeometry> {
  const made: Pair[] = [];
  for (const pair of pairs) {
    const refused = refusals(pair.before);
    if (refused.length > 0) return failure(...refused);
    const model = correctionModel({ ...pair.before, states: [] });
    const checked = checkChanges(model, pair.changes);
    if (!checked.ok) return checked;
    made.push(newPair(model, checked.value, pair.after));
  }
  const keys = [...new Set(made.flatMap(({ tape }) => [...tape.keys()]))];
  const first = keys.map((key) => made.flatMap(({ tape }) => tape.get(key) ?? [])[0] as GeometrySource);
  const prior = first.map(({ u }) => u);
  if (keys.length === 0) return success({ parameters: [], covariance: [], chiSquared: 0, readings: 0 });

  // Parameters in units of their prior uncertainty: the prior is then the unit matrix.
  let at = new Array<number>(keys.length).fill(0);
  let normal = Matrix.eye(keys.length);
  for (let round = 0; round < ROUNDS; round++) {
    normal = Matrix.eye(keys.length);
    const right = Matrix.columnVector(at.map((value) => -value));
    for (const pair of made) {
      const { misfit, slopes } = linearised(pair, keys, prior, at);
      const weighed = slopes.transpose().mmul(pair.weights);
      normal.add(weighed.mmul(slopes));
      right.add(weighed.mmul(misfit));
    }
    const step = solve(normal, right).to1DArray();
    at = at.map((value, k) => value + (step[k] as number));
  }
  const covariance = solve(normal, Matrix.eye(keys.length));
  const misfits = made.reduce((sum, pair) => {
    const { misfit } = linearised(pair, keys, prior, at);
    return sum + misfit.transpose().mmul(pair.weights).mmul(misfit).get(0, 0);
  }, 0);
  return success({
    parameters: first.map(({ of, path, u }, k) => ({
      of,
      path,
      shift: (at[k] as number) * u,
      priorU: u,
      u: u * Math.sqrt(covariance.get(k, k)),
    })),
    covariance: keys.map((_, a) => keys.map((_unused, b) => covariance.get(a, b) * (prior[a] as number) * (prior[b] as number))),
    chiSquared: misfits + at.reduce((sum, value) => sum + value * value, 0),
    readings: made.reduce((sum, { rows }) => sum + rows.length, 0),
  });
}

function newPair(model: CorrectionModel, amounts: ArrayLike<number>, after: BeforeAfter["after"]): Pair {
  const moves = newMoves(model);
  writeMoves(model, amounts, moves);
  const rows = model.drivelines.flatMap(({ input: { driveline } }, d): readonly Row[] => {
    const poses = after[driveline.id];
    if (!poses) return [];
    return shaftIds(driveline).flatMap((id, shaft) => {
      const measured = poses.inclination[poses.shafts.indexOf(id)];
      return measured == null ? [] : [{ driveline: d, shaft, measured }];
    });
  });
  const gauge = model.sources.filter(({ origin }) => origin === "gauge");
  const tape = new Map(model.sources.filter(({ origin }) => origin === "tape").map((source) => [sourceKey(source), source]));
  const bare = { model, moves, gauge, tape, rows, weights: new Matrix(0, 0) };
  const best = inclinations(bare, () => undefined);
  const covariance = Matrix.zeros(rows.length, rows.length);
  for (const source of gauge) {
    const moved = inclinations(bare, (all) => source.apply(all, source.u));
    addOuter(
      covariance,
      moved.map((value, k) => value - (best[k] as number)),
    );
  }
  model.drivelines.forEach(({ input: { driveline } }, d) => {
    const poses = after[driveline.id];
    poses?.sources.forEach(({ u }, k) => {
      addOuter(
        covariance,
        rows.map(({ driveline: on, shaft }) =>
          on === d ? (poses.inclinationBy[poses.shafts.indexOf(shaftIds(driveline)[shaft] ?? "")]?.[k] ?? 0) * u : 0,
        ),
      );
    });
  });
  for (let k = 0; k < rows.length; k++) covariance.set(k, k, covariance.get(k, k) + LEAST_VARIANCE);
  return { ...bare, weights: rows.length > 0 ? solve(covariance, Matrix.eye(rows.length)) : covariance };
}

const addOuter = (to: Matrix, vector: readonly number[]): void => {
  const column = Matrix.columnVector([...vector]);
  to.add(column.mmul(column.transpose()));
};

/** Predicted inclinations of the gauged shafts, radians, with errors applied to the best estimates. */
function inclinations({ model, moves, rows }: Pair, applyErrors: (all: readonly Quantities[]) => void): readonly number[] {
  const quantities = model.drivelines.map(({ nominal }) => copyQuantities(nominal));
  applyErrors(quantities);
  const shafts = model.drivelines.map(({ topology }, d) => {
    const record = new Float64Array(topology.layout.stride);
    writeRecord(topology, quantities[d] as Quantities, record, 0);
    const out = newPlacement(topology.joints);
    const code = placeShafts(topology, record, 0, moves[d]?.[0] as Float64Array, 0, out);
    return Array.from({ length: topology.joints + 1 }, (_, s) => {
      const at = (k: number): number => out.directions[3 * s + k] as number;
      return code === PLACED ? poseOf(vec3(at(0), at(1), at(2))).inclination : 0;
    });
  });
  return rows.map(({ driveline, shaft }) => shafts[driveline]?.[shaft] ?? 0);
}

/** Measured less predicted at the parameters, and how the prediction changes for one prior uncertainty of each. */
function linearised(
  pair: Pair,
  keys: readonly string[],
  prior: readonly number[],
  at: readonly number[],
): { misfit: Matrix; slopes: Matrix } {
  const predicted = (nudged: number, by: number): readonly number[] =>
    inclinations(pair, (all) => {
      keys.forEach((key, k) => {
        pair.tape.get(key)?.apply(all, ((at[k] as number) + (k === nudged ? by : 0)) * (prior[k] as number));
      });
    });
  const here = predicted(-1, 0);
  const columns = keys.map((_, k) => {
    const up = predicted(k, NUDGE);
    const down = predicted(k, -NUDGE);
    return up.map((value, row) => (value - (down[row] as number)) / (2 * NUDGE));
  });
  return {
    misfit: Matrix.columnVector(pair.rows.map(({ measured }, row) => measured - (here[row] as number))),
    slopes: new Matrix(columns).transpose(),
  };
}
