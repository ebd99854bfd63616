import { analysePoses, type DrivelineAnalysis } from "../../analysis/index.js";
import type { PoseModel } from "../../gauging/index.js";
import type { Driveline } from "../../kinematics/index.js";
import { type AxleLoad, type CorrectionDriveline, limitsInState } from "../model/index.js";

/**
 * A driveline as it will stand, analysed like a gauged one: same quantities, same intervals, same verdicts by the limits of the state, from predicted poses with their error law.
 * `driveline` carries the phasings after the change.
 */
export const predictedAnalysis = (
  { limits, maxShaftSpeed, path }: CorrectionDriveline,
  driveline: Driveline,
  poses: PoseModel,
  load: AxleLoad,
  { draws, seed }: { readonly draws: number; readonly seed: number },
): DrivelineAnalysis =>
  analysePoses({ driveline, poses, limits: limitsInState(limits, load), maxShaftSpeed, draws, seed, withheld: false, path });
