import type { AnalysisInput, PosesToJudge } from "@halfturn/engine/analysis";
import type { PoseModel } from "@halfturn/engine/gauging";
import { type Moves, movedPoses } from "./moves.js";

/**
 * Few enough that a drag is followed without a wait (some 2 ms), enough that the intervals do not jump when it begins. One joint's verdict in 140 is not that of the
 * full draws (docs/verification.md), so those are asked for once the hand rests.
 */
const MOVING_DRAWS = 300;

/** The driveline with joints and shaft ends moved by hand, by the same seed for every place so that nothing flickers. `model`: how the readings say that the shafts lie; `withheld`: whether they give no road angles. */
export const movedDriveline = (input: AnalysisInput, model: PoseModel, withheld: boolean, moves: Moves): PosesToJudge => ({
  driveline: input.driveline,
  poses: movedPoses(model, input.driveline, moves),
  limits: input.limits,
  maxShaftSpeed: input.maxShaftSpeed,
  draws: MOVING_DRAWS,
  seed: input.seed,
  withheld,
  path: input.path,
});
