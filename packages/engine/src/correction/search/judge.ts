import type { CorrectionModel, DrivelineModel } from "../geometry/correction-model.js";
import type { DrawnRecords } from "../geometry/draw-records.js";
import { newPlacement, PLACED, type Placement, placeShafts } from "../geometry/place-shafts.js";
import { type Moves, newMoves, writeMove, writeMoves } from "../geometry/write-moves.js";
import type { Reason } from "../model/index.js";
import { exactly, exceeds, marginOf, type Slack } from "./chain-judge.js";
import { type ChainLimits, chainLimits } from "./chain-limits.js";
import { type ChainScratch, newChainScratch } from "./chain-scratch.js";
import { casterReason, slipBlocks, slipOf, stateReason } from "./hard-limits.js";

/** Everything needed to judge candidates: the model, its draws, its limits, and scratch space that every judgement writes over. */
export interface Judge {
  readonly model: CorrectionModel;
  readonly drawn: DrawnRecords;
  /** One a driveline and state. */
  readonly limits: readonly (readonly ChainLimits[])[];
  readonly placements: readonly Placement[];
  readonly scratch: readonly ChainScratch[];
  readonly exact: readonly Slack[];
  readonly amounts: Float64Array;
  readonly moves: Moves;
  /** The state in which each driveline failed last: candidates that are looked at one after another fail in the same one, so it is tried first. */
  readonly failedIn: Int32Array;
  /** Margin with nothing done, one a driveline; and which draws fail with nothing done: both serve where a candidate does not touch a driveline. */
  readonly idleMargins: readonly number[];
  readonly idleFails: readonly Uint8Array[];
}

/** Makes room and judges doing nothing once, at the best estimate and on every draw. */
export function newJudge(model: CorrectionModel, drawn: DrawnRecords): Judge {
  const joints = model.drivelines.map(({ topology }) => topology.joints);
  const bare = {
    model,
    drawn,
    limits: model.drivelines.map(({ input }) => model.states.map(({ load }) => chainLimits(input, load))),
    placements: joints.map(newPlacement),
    scratch: joints.map(newChainScratch),
    exact: joints.map(exactly),
    amounts: new Float64Array(model.adjusters.length),
    moves: newMoves(model),
    failedIn: new Int32Array(joints.length),
  };
  writeMoves(model, bare.amounts, bare.moves);
  const idleMargins = model.drivelines.map((_, d) => drivelineMargin(bare, d));
  const idleFails = model.drivelines.map((_, d) =>
    Uint8Array.from({ length: drawn.draws + 1 }, (_unused, row) => (row > 0 && drivelineFails(bare, d, row, bare.exact) ? 1 : 0)),
  );
  return { ...bare, idleMargins, idleFails };
}

type Bare = Omit<Judge, "idleMargins" | "idleFails">;

/** -Infinity = blocked by a hard limit in some state. */
export const BLOCKED = Number.NEGATIVE_INFINITY;

function drivelineMargin({ model, drawn, limits, placements, scratch, moves }: Bare, d: number, heedHard = true): number {
  const on = model.drivelines[d] as DrivelineModel;
  const placement = placements[d] as Placement;
  const slip = on.topology.full ? slipOf(on) : null;
  let margin = Number.POSITIVE_INFINITY;
  for (let s = 0; s < model.states.length; s++) {
    const move = moves[d]?.[s] as Float64Array;
    if (placeShafts(on.topology, drawn.records[d] as Float64Array, 0, move, s, placement) !== PLACED) return BLOCKED;
    if (heedHard && slipBlocks(slip, placement.slip[0] as number) !== null) return BLOCKED;
    margin = Math.min(margin, marginOf(limits[d]?.[s] as ChainLimits, placement.directions, move, scratch[d] as ChainScratch));
  }
  return margin;
}

/**
 * Smallest share of any limit that is left at the best estimate, over all states and drivelines, for the amounts in `judge.amounts`; BLOCKED where a hard
 * limit says no. `touched` lists the drivelines that the amounts move. Without `heedHard` only geometry that cannot stand says no.
 */
export function candidateMargin(judge: Judge, touched: readonly number[], heedHard = true): number {
  const { model, moves, amounts, idleMargins } = judge;
  let margin = !heedHard || casterReason(model, amounts) === null ? Number.POSITIVE_INFINITY : BLOCKED;
  for (let d = 0; d < model.drivelines.length && margin > BLOCKED; d++) {
    if (touched.includes(d)) {
      for (let s = 0; s < model.states.length; s++) writeMove(model, d, s, amounts, moves[d]?.[s] as Float64Array);
      margin = Math.min(margin, drivelineMargin(judge, d, heedHard));
    } else {
      margin = Math.min(margin, idleMargins[d] as number);
    }
  }
  return margin;
}

/** Every hard limit that the amounts in `judge.amounts` break, and where. */
export function hardReasons({ model, drawn, placements, moves, amounts }: Judge): readonly Reason[] {
  writeMoves(model, amounts, moves);
  const caster = casterReason(model, amounts);
  const places = model.drivelines.flatMap(({ topology }, d) =>
    model.states.flatMap((_, s) => {
      const placement = placements[d] as Placement;
      const code = placeShafts(topology, drawn.records[d] as Float64Array, 0, moves[d]?.[s] as Float64Array, s, placement);
      const found = stateReason(model, d, s, code, placement);
      return found ? [found] : [];
    }),
  );
  return caster ? [caster, ...places] : places;
}

/** Whether a draw fails on a driveline in some state, beyond the slack (one a state and driveline, or one for all states). */
function drivelineFails(bare: Bare, d: number, row: number, slack: readonly Slack[]): boolean {
  const { model, failedIn } = bare;
  const first = failedIn[d] as number;
  if (stateFails(bare, d, first, row, slack)) return true;
  for (let s = 0; s < model.states.length; s++) {
    if (s !== first && stateFails(bare, d, s, row, slack)) {
      failedIn[d] = s;
      return true;
    }
  }
  return false;
}

function stateFails(
  { model, drawn, limits, placements, scratch, moves }: Bare,
  d: number,
  s: number,
  row: number,
  slack: readonly Slack[],
): boolean {
  const { topology } = model.drivelines[d] as DrivelineModel;
  const placement = placements[d] as Placement;
  const spare = slack[d] as Slack;
  const move = moves[d]?.[s] as Float64Array;
  if (placeShafts(topology, drawn.records[d] as Float64Array, row * topology.layout.stride, move, s, placement) !== PLACED)
    return spare.none;
  return exceeds(limits[d]?.[s] as ChainLimits, placement.directions, move, spare, scratch[d] as ChainScratch);
}

/** Writes the moves of the amounts in `judge.amounts` for the touched drivelines, as `drawFails` needs them. */
export function prepare({ model, moves, amounts }: Judge, touched: readonly number[]): void {
  for (const d of touched) for (let s = 0; s < model.states.length; s++) writeMove(model, d, s, amounts, moves[d]?.[s] as Float64Array);
}

/** Whether draw `row` (from 1) exceeds some limit in some state, beyond the slack; the moves must have been prepared. */
export function drawFails(judge: Judge, touched: readonly number[], row: number, slack: readonly Slack[]): boolean {
  for (let d = 0; d < judge.idleFails.length; d++) {
    if (!touched.includes(d) && judge.idleFails[d]?.[row] === 1) return true;
  }
  for (const d of touched) if (drivelineFails(judge, d, row, slack)) return true;
  return false;
}
