import { type CorrectionDriveline, chainSign, type VehicleState } from "../model/index.js";
import type { AdjusterModel } from "./adjuster-model.js";
import type { CorrectionModel, DrivelineModel } from "./correction-model.js";
import { guideMove, noseUp } from "./guide-move.js";
import { newGuidePlace } from "./guide-place.js";
import { MOVE, moveSize, phasingsAt } from "./move-layout.js";
import { wedgeShift } from "./wedge-shift.js";

/** Moves of every driveline in every state: [driveline][state]. */
export type Moves = readonly (readonly Float64Array[])[];

/** Room for the moves of every driveline in every state, all nought. */
export const newMoves = ({ drivelines, states }: CorrectionModel): Moves =>
  drivelines.map(({ topology }) => states.map(() => new Float64Array(moveSize(topology.joints))));

const guides = newGuidePlace();

/**
 * Writes what the amounts (one an adjuster of the model, 0 = not used) do to one driveline in one state.
 * The same pinion-up turn raises the inclination on either axle; only wind-up and the guides ask which way the shaft runs.
 */
export function writeMove(model: CorrectionModel, d: number, s: number, amounts: ArrayLike<number>, move: Float64Array): void {
  const { input, topology } = model.drivelines[d] as DrivelineModel;
  const state = model.states[s] as VehicleState;
  move.fill(0);
  writePhasings(input, topology.joints, move);
  const moved = state.drivelineId === null || state.drivelineId === input.driveline.id;
  const travel = moved ? state.axleTravel : 0;
  move[MOVE.turn] = (moved ? (state.pinionPitch ?? 0) : 0) + windUpTurn(input, moved ? state.load : "none");
  move[MOVE.axleZ] = -travel;

  guided.rise = 0;
  guided.lower = 0;
  guided.upper = 0;
  for (let k = 0; k < model.adjusters.length; k++) {
    const amount = amounts[k] as number;
    if (amount === 0) continue;
    const adjuster = model.adjusters[k] as AdjusterModel;
    if (adjuster.drivelines.includes(d)) writeChange(adjuster, amount, input, topology.joints, move);
  }
  guideAxle(input, moved ? state : null, move);
}

/** What the axle's guides have to follow, gathered over the changes of one move. */
const guided = { rise: 0, lower: 0, upper: 0 };

/** Adds one change to a move; what goes through the axle's guides is gathered for the end. */
function writeChange(model: AdjusterModel, amount: number, input: CorrectionDriveline, joints: number, move: Float64Array): void {
  const { adjuster, place } = model;
  switch (adjuster.kind) {
    case "mount-spacer":
      add(move, MOVE.spacer, amount);
      return;
    case "axle-wedge": {
      const thicker = wedgeShift(adjuster, amount, input.axle);
      const pad = input.axle?.padInclination ?? 0;
      add(move, MOVE.turn, amount);
      add(move, MOVE.padAlong, thicker * Math.sin(pad));
      add(move, MOVE.padUp, thicker * Math.cos(pad));
      return;
    }
    case "support-drop":
      add(move, MOVE.supports + 2 * place + 1, -amount);
      return;
    case "support-shift":
      add(move, MOVE.supports + 2 * place, chainSign(input.runs) * amount);
      return;
    case "ride-height":
      add(move, MOVE.axleZ, -amount);
      if (model.guided) guided.rise += amount;
      else add(move, MOVE.turn, amount * (adjuster.pitchPerMetre as number));
      return;
    case "link-length":
      if (model.guided) guided[adjuster.link] += amount;
      else add(move, MOVE.turn, amount * (adjuster.pitchPerMetre as number));
      return;
    case "rephase":
      writePhasing(move, joints, place, (input.driveline.sections[place]?.phasing ?? 0) + (amount * 2 * Math.PI) / adjuster.splineTeeth);
  }
}

/** Adds what the guides make of the travel. A pitch stated for the state stands for the guides' own on that part of the way. */
function guideAxle(input: CorrectionDriveline, state: VehicleState | null, move: Float64Array): void {
  const { rise, lower, upper } = guided;
  const guide = input.axle?.guide ?? null;
  const travel = state?.axleTravel ?? 0;
  const stated = state !== null && state.pinionPitch !== null;
  if (!guide || (rise === 0 && lower === 0 && upper === 0 && travel === 0)) return;
  guideMove(guide, input.runs, travel + rise, lower, upper, guides);
  let turn = guides.turn;
  let reached = guides.reached;
  add(move, MOVE.axleX, chainSign(input.runs) * guides.forward);
  if (stated && travel !== 0) {
    guideMove(guide, input.runs, travel, 0, 0, guides);
    turn -= guides.turn;
    reached &&= guides.reached;
  }
  add(move, MOVE.turn, noseUp(input.runs, turn));
  move[MOVE.guideTravel] = Math.abs(rise + (stated ? 0 : travel)) + Math.abs(lower) + Math.abs(upper);
  move[MOVE.outOfReach] = reached ? 0 : 1;
}

/** Under forward drive the axle reacts against its wheels: a rear pinion's nose rises, a front pinion's falls; on overrun the other way. */
function windUpTurn({ axle, runs }: CorrectionDriveline, load: VehicleState["load"]): number {
  if (!axle?.windUp || load === "none") return 0;
  return load === "drive-torque" ? -chainSign(runs) * axle.windUp.drive : chainSign(runs) * axle.windUp.coast;
}

const add = (move: Float64Array, place: number, by: number): void => {
  move[place] = (move[place] as number) + by;
};

function writePhasing(move: Float64Array, joints: number, section: number, phasing: number): void {
  const at = phasingsAt(joints) + 2 * section;
  move[at] = Math.cos(phasing);
  move[at + 1] = Math.sin(phasing);
}

function writePhasings({ driveline }: CorrectionDriveline, joints: number, move: Float64Array): void {
  driveline.sections.forEach(({ phasing }, k) => {
    writePhasing(move, joints, k, phasing ?? 0);
  });
}

/** All drivelines and states. */
export function writeMoves(model: CorrectionModel, amounts: ArrayLike<number>, moves: Moves): void {
  moves.forEach((row, d) => {
    row.forEach((move, s) => {
      writeMove(model, d, s, amounts, move);
    });
  });
}
