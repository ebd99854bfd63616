import loadMujoco, { type MainModule } from "mujoco-js";
import { add, cross, scale, turned, unit, type Vector } from "./vectors.js";

/**
 * A chain of cross joints as rigid bodies in a multibody engine (MuJoCo 3.3.8, by mujoco-js): shafts in bearings, crosses hinged in one yoke and tied to the other.
 * It is given where things are, and no formula of a universal joint. One end is held at an angle; the others are left to the constraints.
 * Without gravity or friction the constraint forces die out only where every yoke sits on its cross, so that what settles is the position, free of any dynamics.
 */
export interface MultibodyChain {
  readonly directions: readonly Vector[];
  /** Of each section, in radians, right-hand about its direction from the source-end yoke to the driven-end yoke. */
  readonly phasings: readonly number[];
  /** The source's yoke at rest, across it. */
  readonly sourceArm: Vector;
}

/** Which end is turned. */
export type HeldEnd = "source" | "driven";

/** Steps per settling at most; about ninety are taken. */
const MOST_STEPS = 5_000;
/** Radians per step below which the bodies have settled; the closing speed is some tenth per step, so as much is left again ten times over. */
const SETTLED = 1e-13;

/** The yokes' arms at rest: across each joint, that of the driving yoke and that of the driven one. Both lie in the cross, at right angles. */
export function armsAtRest({ directions, phasings, sourceArm }: MultibodyChain): readonly (readonly [driving: Vector, driven: Vector])[] {
  let driving = sourceArm;
  return directions.slice(1).map((direction, k) => {
    const pair = [driving, unit(cross(direction, driving))] as const;
    driving = turned(pair[1], direction, phasings[k] ?? 0);
    return pair;
  });
}

const BODY = '<inertial pos="0 0 0" mass="1" diaginertia="1 1 1"/>';
const text = (v: Vector): string => v.join(" ");

function modelOf(chain: MultibodyChain, held: HeldEnd): string {
  const { directions } = chain;
  const n = directions.length - 1;
  const arms = armsAtRest(chain);
  // Sections a metre long between joint centres.
  const centres: Vector[] = [[0, 0, 0]];
  for (let k = 1; k < n; k++) centres.push(add(centres[k - 1] as Vector, directions[k] as Vector));
  const from = (v: Vector, origin: Vector): Vector => add(v, scale(origin, -1));
  const ties: string[] = [];
  const bodies = directions.map((direction, s) => {
    const origin = centres[Math.max(0, s - 1)] as Vector;
    // The cross hangs in the yoke on the held side and is tied to the other yoke at the end of that one's arm.
    const joint = held === "source" ? s : s - 1;
    const pair = arms[joint];
    const isHeld = s === (held === "source" ? 0 : n);
    const bearing = isHeld ? "" : `<joint name="shaft${s}" type="hinge" axis="${text(direction)}"/>`;
    if (!pair) return `<body name="shaft${s}" pos="${text(origin)}">${BODY}${bearing}</body>`;
    const [own, other] = held === "source" ? pair : [pair[1], pair[0]];
    const at = from(centres[joint] as Vector, origin);
    ties.push(
      `<connect body1="cross${joint}" body2="shaft${held === "source" ? s + 1 : s - 1}" anchor="${text(other)}" solref="0.004 1" solimp="0.9999 0.9999 0.001"/>`,
    );
    const spider = `<body name="cross${joint}" pos="${text(at)}">${BODY}<joint type="hinge" axis="${text(own)}"/></body>`;
    return `<body name="shaft${s}" pos="${text(origin)}"${isHeld ? ' mocap="true"' : ""}>${BODY}${bearing}${spider}</body>`;
  });
  return `<mujoco><compiler angle="radian"/><option timestep="0.002" gravity="0 0 0" tolerance="0"/>
    <worldbody>${bodies.join("")}</worldbody><equality>${ties.join("")}</equality></mujoco>`;
}

/** The engine, loaded once. */
export const loadMultibody = (): Promise<MainModule> => loadMujoco();

/** Turns the held end through `angles` (radians, in small steps from 0) and says how far each shaft has turned from rest: one row a shaft, source first. */
export function settledTurns(
  mujoco: MainModule,
  chain: MultibodyChain,
  held: HeldEnd,
  angles: readonly number[],
): readonly (readonly number[])[] {
  const file = "/chain.xml";
  mujoco.FS.writeFile(file, modelOf(chain, held));
  const model = mujoco.MjModel.loadFromXML(file);
  const data = new mujoco.MjData(model);
  const last = chain.directions.length - 1;
  const axis = chain.directions[held === "source" ? 0 : last] as Vector;
  // Places of the hinges among the coordinates: bodies in order, each shaft's bearing before the cross in it; the held end has none.
  const places = chain.directions.map((_, s) => (held === "source" ? 2 * s - 1 : s === 0 ? 0 : 2 * s - 1));
  const turns = chain.directions.map((): number[] => []);
  for (const angle of angles) {
    data.mocap_quat.set([Math.cos(angle / 2), ...scale(axis, Math.sin(angle / 2))]);
    settle(mujoco, model, data);
    turns.forEach((row, s) => {
      row.push(s === (held === "source" ? 0 : last) ? angle : (data.qpos[places[s] as number] as number));
    });
  }
  data.delete();
  model.delete();
  return turns;
}

type Model = ReturnType<MainModule["MjModel"]["loadFromXML"]>;
type Data = InstanceType<MainModule["MjData"]>;

/** Steps until nothing moves. The coordinates are read themselves, since body poses lag a step behind them. */
function settle(mujoco: MainModule, model: Model, data: Data): void {
  let before = Float64Array.from(data.qpos);
  for (let step = 1; step <= MOST_STEPS; step++) {
    mujoco.mj_step(model, data);
    const now = Float64Array.from(data.qpos);
    const moved = now.reduce((most, value, k) => Math.max(most, Math.abs(value - (before[k] as number))), 0);
    if (moved < SETTLED && step > 5) return;
    before = now;
  }
  throw new Error("the bodies have not settled");
}
