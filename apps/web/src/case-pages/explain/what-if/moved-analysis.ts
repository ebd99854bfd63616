import { type AnalysisInput, analysePoses, type DrivelineAnalysis } from "@halfturn/engine/analysis";
import { fuseGauging } from "@halfturn/engine/gauging";
import { type Moves, movedPoses } from "./moves.js";

/** Few enough that a drag is followed without a wait (some 3 ms), enough that the intervals do not jump when it begins. */
const DRAWS = 500;

/** The result with joints and shaft ends moved by hand, by the same seed for every place so that nothing flickers. `measured`: what the gauging gave. */
export const movedAnalysis = (input: AnalysisInput, measured: DrivelineAnalysis, moves: Moves): DrivelineAnalysis =>
  analysePoses({
    ...input,
    poses: movedPoses(fuseGauging(input.gauging, input.driveline), input.driveline, moves),
    draws: DRAWS,
    withheld: measured.withheld,
  });
