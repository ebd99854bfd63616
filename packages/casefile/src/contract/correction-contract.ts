import type { Verdict } from "@halfturn/engine/analysis";
import type { Instruction, LimitParams, Reason } from "@halfturn/engine/correction";
import type { WrittenChange } from "../correction/amounts.js";
import type { DrivelineJson, Quantity } from "./analysis-contract.js";

export interface PredictedDrivelineJson extends DrivelineJson {
  /** + = pulled out, against as gauged. */
  readonly slipTravelMm: Quantity;
  readonly slipVerdict: Verdict;
  /** angles-only: a length is missing, so no joint centre could be moved. */
  readonly geometry: "full" | "angles-only";
}

export interface PredictedStateJson {
  readonly id: string;
  readonly drivelines: readonly PredictedDrivelineJson[];
}

/** A measurement that nobody took, and what taking it would take off the uncertainty of the largest joint angle. */
export interface MissingJson {
  readonly of: string;
  readonly path: string;
  readonly effectDeg: number | null;
}

/** What `predict --json` prints. */
export interface PredictionJson {
  readonly format: "halfturn-prediction";
  readonly version: 1;
  readonly seed: number;
  readonly changes: readonly WrittenChange[];
  readonly states: readonly PredictedStateJson[];
  /** Hard limits that the changes break: they may be looked at, never fitted. */
  readonly blockedBy: readonly Reason[];
  readonly missing: readonly MissingJson[];
  /** Drivelines of which nothing may be said, and why; nothing that moves them was used. */
  readonly leftOut: readonly Reason[];
  /** Corrections of the case, by their places, whose gauging after taught the lengths and arms in use. */
  readonly learnedFrom: readonly number[];
}

/** One limit in one state; angles in degrees, accelerations in rad/s2. */
export interface LimitUseJson extends LimitParams {
  /** Share of the limit that is left; < 0 = exceeded. */
  readonly margin: number;
}

export type BlockJson =
  | ({ readonly kind: "limit" } & LimitUseJson)
  | ({ readonly kind: "hard"; readonly changes: readonly WrittenChange[] } & Reason);

/** A candidate in its place in the ranking. */
export interface ChoiceJson {
  readonly changes: readonly WrittenChange[];
  /** Share of the draws in which every limit holds in every state; null where something that could forbid it was not measured. */
  readonly probabilityWithin: number | null;
  /** The same for the limits that can be computed. */
  readonly probabilityOfLimits: number;
  /** Labour and parts together. */
  readonly labour: number;
  /** null where a hard limit forbids it. */
  readonly margin: number | null;
}

export interface IdleChoiceJson extends ChoiceJson {
  /** The limit of which doing nothing leaves least. */
  readonly tightest: LimitUseJson | null;
}

export interface PlanChoiceJson extends ChoiceJson {
  readonly tightest: LimitUseJson | null;
  readonly states: readonly PredictedStateJson[];
  readonly instructions: readonly Instruction[];
}

/** What one adjuster alone, cut to measure, would do at best. */
export interface OptimumJson extends WrittenChange {
  readonly margin: number;
}

/** What `plan --json` prints. */
export interface PlanJson {
  readonly format: "halfturn-plan";
  readonly version: 1;
  readonly seed: number;
  readonly examined: number;
  readonly plans: readonly PlanChoiceJson[];
  readonly blockedBy: readonly BlockJson[];
  readonly nearest: ChoiceJson | null;
  readonly doingNothing: IdleChoiceJson;
  readonly bestSingleChange: ChoiceJson | null;
  readonly bestWithoutAxle: ChoiceJson | null;
  readonly optima: readonly OptimumJson[];
  readonly missing: readonly MissingJson[];
  readonly notUsed: readonly Reason[];
  /** Drivelines of which nothing may be said, and why; nothing that moves them was used. */
  readonly leftOut: readonly Reason[];
  /** Corrections of the case, by their places, whose gauging after taught the lengths and arms in use. */
  readonly learnedFrom: readonly number[];
}
