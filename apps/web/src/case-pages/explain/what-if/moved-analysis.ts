import { type AnalysisInput, analysePoses, type DrivelineAnalysis } from "@halfturn/engine/analysis";
import type { PoseModel } from "@halfturn/engine/gauging";
import { type Moves, movedPoses } from "./moves.js";

/** Few enough that a drag is followed without a wait (some 2 ms), enough that the intervals do not jump when it begins. */
const DRAWS = 300;

/** The result with joints and shaft ends moved by hand, by the same seed for every place so that nothing flickers. `model`: how the readings say that the shafts lie; `measured`: what came of it. */
export const movedAnalysis = (input: AnalysisInput, model: PoseModel, measured: DrivelineAnalysis, moves: Moves): DrivelineAnalysis =>
  analysePoses({
    ...input,
    poses: movedPoses(model, input.driveline, moves),
    draws: DRAWS,
    withheld: measured.withheld,
  });
