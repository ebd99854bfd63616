import type { AdjusterModel } from "../geometry/adjuster-model.js";
import type { DrivelineModel } from "../geometry/correction-model.js";
import { wedgeShift } from "../geometry/wedge-shift.js";
import { newMoves, writeMoves } from "../geometry/write-moves.js";
import type { Subset } from "./candidate-space.js";
import { type Slack, slackFor } from "./chain-judge.js";
import type { ChainLimits } from "./chain-limits.js";
import type { Judge } from "./judge.js";
import { linesStayLong, type MoveSpan, newMoveSpan, type Reach, reachOf, stateSpan, turnBounds } from "./turn-bounds.js";

/** Bounds on how much the candidates of a box of amounts can differ from one of them. */
export interface BoxSlack {
  /** Slack of every driveline for places [low, high] about `centre`; null where nothing is proven and the box must be split. */
  readonly slackOf: (subset: Subset, low: Int32Array, high: Int32Array, centre: Int32Array) => readonly Slack[] | null;
}

/** Measures the draws once and hands out slacks. */
export function boxSlack(judge: Judge): BoxSlack {
  const { model, drawn, limits, exact } = judge;
  const idle = newMoves(model);
  writeMoves(model, new Float64Array(model.adjusters.length), idle);
  const largestSpacer = model.adjusters.reduce((sum, { adjuster, amounts }) => {
    return adjuster.kind === "mount-spacer" ? sum + Math.max(0, ...amounts.map(Math.abs)) : sum;
  }, 0);
  const reaches = model.drivelines.map((on, d) => reachOf(on, drawn.records[d] as Float64Array, drawn.draws, largestSpacer));
  const states = model.drivelines.map((_, d) => stateSpan(model, d, idle, reaches[d] as Reach));
  const proven = new Map<Subset, boolean>();

  const spanOf = (
    subset: Subset,
    d: number,
    low: ArrayLike<number>,
    high: ArrayLike<number>,
    centre: ArrayLike<number> | null,
  ): MoveSpan | null => {
    const on = model.drivelines[d] as DrivelineModel;
    const span = newMoveSpan(on.topology.joints);
    for (let k = 0; k < subset.adjusters.length; k++) {
      const adjuster = model.adjusters[subset.adjusters[k] as number] as AdjusterModel;
      if (!adjuster.drivelines.includes(d)) continue;
      const amounts = subset.amounts[k] as readonly number[];
      const from = centre ? (amounts[centre[k] as number] as number) : 0;
      if (!widen(span, adjuster, on, amounts, low[k] as number, high[k] as number, from)) return null;
    }
    return span;
  };

  const linesLong = (subset: Subset): boolean => {
    const known = proven.get(subset);
    if (known !== undefined) return known;
    const first = subset.amounts.map(() => 0);
    const last = subset.amounts.map((amounts) => amounts.length - 1);
    const answer = subset.drivelines.every((d) => {
      const span = spanOf(subset, d, first, last, null);
      const on = model.drivelines[d] as DrivelineModel;
      return span !== null && linesStayLong(on, reaches[d] as Reach, sum(span, states[d] as MoveSpan));
    });
    proven.set(subset, answer);
    return answer;
  };

  return {
    slackOf: (subset, low, high, centre) => {
      if (!linesLong(subset)) return null;
      const slacks = [...exact];
      for (const d of subset.drivelines) {
        const span = spanOf(subset, d, low, high, centre);
        const turns = span && turnBounds(model.drivelines[d] as DrivelineModel, reaches[d] as Reach, span);
        if (!turns) return null;
        slacks[d] = slackFor(turns, limits[d]?.[0] as ChainLimits);
      }
      return slacks;
    },
  };
}

/** Widens a span by what an adjuster's amounts [low, high] can differ from `from`. False where that has no simple bound. */
function widen(
  span: MoveSpan,
  model: AdjusterModel,
  on: DrivelineModel,
  amounts: readonly number[],
  low: number,
  high: number,
  from: number,
): boolean {
  const { adjuster, guided, place } = model;
  const radius = Math.max(Math.abs((amounts[high] as number) - from), Math.abs((amounts[low] as number) - from));
  if (radius === 0) return true;
  switch (adjuster.kind) {
    case "mount-spacer":
      span.spacer += radius;
      return true;
    case "axle-wedge": {
      span.turn += radius;
      const at = wedgeShift(adjuster, from, on.input.axle);
      let most = 0;
      for (let k = low; k <= high; k++) most = Math.max(most, Math.abs(wedgeShift(adjuster, amounts[k] as number, on.input.axle) - at));
      span.pad += most;
      return true;
    }
    case "support-drop":
    case "support-shift":
      span.supports[place] = (span.supports[place] as number) + radius;
      return true;
    case "ride-height":
    case "link-length": {
      const guide = on.input.axle?.guide;
      const rate = guided ? (guide?.kind === "rate" ? guide.pitchPerMetre : null) : (adjuster.pitchPerMetre as number);
      // Springs and links follow no straight law: such amounts are looked at one by one. So are phasings.
      if (rate === null) return false;
      span.turn += radius * Math.abs(rate);
      if (guided) span.guideTravel += radius;
      if (adjuster.kind === "ride-height") span.axle += radius;
      return true;
    }
    case "rephase":
      return false;
  }
}

const sum = (a: MoveSpan, b: MoveSpan): MoveSpan => ({
  spacer: a.spacer + b.spacer,
  turn: a.turn + b.turn,
  guideTravel: a.guideTravel + b.guideTravel,
  axle: a.axle + b.axle,
  pad: a.pad + b.pad,
  supports: a.supports.map((move, j) => move + (b.supports[j] as number)),
});
