import type { Instruction } from "../consequence/instruction.js";
import type { AdjusterKind, AmountUnit, Reason } from "../model/index.js";
import type { MissingMeasurement } from "../predict/missing-measurements.js";
import type { PredictedState } from "../predict/predict.js";
import type { ContinuousOptimum } from "./continuous-optimum.js";
import type { StateLimitUse } from "./limit-report.js";

export interface PlannedChange {
  readonly adjusterId: string;
  readonly kind: AdjusterKind;
  /** In radians, metres or spline steps, as `unit` says. */
  readonly amount: number;
  readonly unit: AmountUnit;
}

/** A candidate in its place in the ranking. */
export interface RankedChoice {
  readonly changes: readonly PlannedChange[];
  /** Share of the common draws in which every limit holds in every state; null where the slip of a moved driveline is not known, or a length is missing. */
  readonly probabilityWithin: number | null;
  /** The same for all limits that can be computed; what the ranking uses. */
  readonly probabilityOfLimits: number;
  /** Labour and parts together, in the case's own measure. */
  readonly labour: number;
  /** Smallest share of any limit that is left at the best estimate; < 0 = exceeded. */
  readonly margin: number;
}

/** Doing nothing, with the limit of which it leaves least; null where the vehicle cannot stand in some state. */
export interface IdleChoice extends RankedChoice {
  readonly tightest: StateLimitUse | null;
}

export interface Plan extends RankedChoice {
  /** The limit with the smallest margin. */
  readonly tightest: StateLimitUse | null;
  readonly states: readonly PredictedState[];
  readonly instructions: readonly Instruction[];
}

/** What stands in the way: a limit that even the nearest candidate exceeds, or a hard limit that alone rules out one that would do. */
export type Block =
  | { readonly kind: "limit"; readonly use: StateLimitUse }
  | { readonly kind: "hard"; readonly reason: Reason; readonly changes: readonly PlannedChange[] };

export interface PlanResult {
  /** Candidates looked at, doing nothing included. */
  readonly examined: number;
  /** Best first; doing nothing stands among the candidates like any other. */
  readonly plans: readonly Plan[];
  /** Empty when some candidate keeps every limit at the best estimate. */
  readonly blockedBy: readonly Block[];
  /** The candidate that comes nearest when none keeps every limit; null otherwise. */
  readonly nearest: RankedChoice | null;
  readonly doingNothing: IdleChoice;
  /** The single change that helps most, by chance and then by margin, whatever its labour; null where none betters doing nothing. */
  readonly bestSingleChange: RankedChoice | null;
  /** The first that leaves the axle alone; doing nothing does not count. */
  readonly bestWithoutAxle: RankedChoice | null;
  readonly optima: readonly ContinuousOptimum[];
  /** What nobody measured, and the most that it could move any of the plans; largest first. */
  readonly missing: readonly MissingMeasurement[];
  /** Adjusters that could not be used, and why. */
  readonly notUsed: readonly Reason[];
  /** Drivelines of which nothing may be said, and why; nothing that moves them was used. */
  readonly leftOut: readonly Reason[];
}

export interface PlanOptions {
  /** Changes at once, default 2. */
  readonly maxChanges?: number;
  /** Adjusters that must stay as they are, by id or kind. */
  readonly keep?: readonly string[];
  /** Plans to return, default 3. */
  readonly count?: number;
  /** Common draws behind the probabilities, default 500. */
  readonly rankDraws?: number;
  /** Draws behind the intervals of each plan's prediction, default 2000. */
  readonly detailDraws?: number;
}
