import type { DrivelineModel } from "../geometry/correction-model.js";
import { type Placement, placeShafts } from "../geometry/place-shafts.js";
import { writeMoves } from "../geometry/write-moves.js";
import { limitUses } from "./chain-judge.js";
import type { ChainLimits, LimitUse } from "./chain-limits.js";
import type { ChainScratch } from "./chain-scratch.js";
import type { Judge } from "./judge.js";

/** What is used of one limit, in one state, on one driveline; radians or rad/s2. */
export interface StateLimitUse extends LimitUse {
  readonly state: string;
  readonly drivelineId: string;
  /** Slip travel at the best estimate, metres; the same for all limits of a driveline in a state. */
  readonly slipTravel: number;
}

/** Every limit at the best estimate for the given amounts, states and drivelines in turn. */
export function limitReport(judge: Judge, amounts: ArrayLike<number>): readonly StateLimitUse[] {
  const { model, drawn, limits, placements, scratch, moves } = judge;
  writeMoves(model, amounts, moves);
  return model.states.flatMap((state, s) =>
    model.drivelines.flatMap(({ input, topology }: DrivelineModel, d) => {
      const placement = placements[d] as Placement;
      const move = moves[d]?.[s] as Float64Array;
      if (placeShafts(topology, drawn.records[d] as Float64Array, 0, move, s, placement) !== 0) return [];
      const { driveline } = input;
      const names = { driveline: driveline.id, sections: driveline.sections.map(({ id }) => id) };
      const slipTravel = placement.slip[0] as number;
      return limitUses(limits[d]?.[s] as ChainLimits, placement.directions, move, scratch[d] as ChainScratch, names).map((use) => ({
        ...use,
        state: state.id,
        drivelineId: driveline.id,
        slipTravel,
      }));
    }),
  );
}
