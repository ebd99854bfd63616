import type { DrivelineAnalysis, Estimate, Verdict } from "../../analysis/index.js";
import { estimateVerdict } from "../../analysis/index.js";
import type { Driveline } from "../../kinematics/index.js";
import type { Radians } from "../../units/index.js";
import { type CorrectionModel, correctionModel, type DrivelineModel, refusals } from "../geometry/correction-model.js";
import {
  type AxleLoad,
  type Change,
  type CorrectionInput,
  failure,
  type Outcome,
  type Reason,
  reason,
  success,
  toMillimetres,
} from "../model/index.js";
import { casterReason, placementReason, slipBlocks, slipKnown, slipOf } from "../search/hard-limits.js";
import { checkChanges } from "./check-changes.js";
import { linearEstimate } from "./linear-estimate.js";
import { type MissingMeasurement, missingMeasurements } from "./missing-measurements.js";
import { predictedAnalysis } from "./predicted-analysis.js";
import { type PredictedPoses, predictedPoses } from "./predicted-poses.js";

/** A driveline in one state after the changes. */
export interface PredictedDriveline extends DrivelineAnalysis {
  /** Travel of the slip spline against as gauged, metres, + = pulled out; null where lengths are missing or the driveline has no section. */
  readonly slipTravel: Estimate | null;
  /** over: pulled out past its minimum engagement; under: pushed in past its travel; not-gauged: engagement or travel was not measured. */
  readonly slipVerdict: Verdict;
  /** angles-only: a length is missing, so only the turned parts turn and no joint centre moves. */
  readonly geometry: "full" | "angles-only";
}

export interface PredictedState {
  readonly id: string;
  readonly drivelines: readonly PredictedDriveline[];
}

export interface Prediction {
  readonly changes: readonly Change[];
  readonly states: readonly PredictedState[];
  /** Hard limits that the changes break: they may be looked at, never fitted. */
  readonly blocked: readonly Reason[];
  /** What nobody measured, and how far each could move the prediction; largest first. */
  readonly missing: readonly MissingMeasurement[];
  /** Drivelines of which nothing may be said, and why; none of the changes moves them. */
  readonly leftOut: readonly Reason[];
}

/**
 * What the vehicle will do after the changes, in every state: angles in radians, lengths in metres, with 95 % intervals from the gauge, the tape and the stated
 * angles. A driveline under a stop finding, or with a shaft that was not gauged, is left out. Refuses with reasons: a change that would move such a driveline,
 * no other driveline, an unknown adjuster or one that lacks its measurements, a removal beyond what is
 * fitted, geometry that cannot stand. Deterministic for `input.seed`; agreed design, section 8.
 */
export function predict(input: CorrectionInput, changes: readonly Change[]): Outcome<Prediction> {
  const refused = refusals(input);
  if (refused.length > 0) return failure(...refused);
  const model = correctionModel(input);
  const checked = checkChanges(model, changes);
  return checked.ok ? predictAmounts(model, checked.value, changes, input) : checked;
}

/** As `predict`, for amounts already checked: one for every adjuster of the model. */
export function predictAmounts(
  model: CorrectionModel,
  amounts: ArrayLike<number>,
  changes: readonly Change[],
  options: { readonly draws: number; readonly seed: number },
): Outcome<Prediction> {
  const steps = predictSteps(model, amounts, changes, options);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

/** As `predictAmounts`, pausing after each driveline of each state. */
export function* predictSteps(
  model: CorrectionModel,
  amounts: ArrayLike<number>,
  changes: readonly Change[],
  options: { readonly draws: number; readonly seed: number },
): Generator<void, Outcome<Prediction>> {
  const poses = predictedPoses(model, amounts);
  const impossible = model.drivelines.flatMap(({ input }, d) =>
    model.states.flatMap((state, s) => {
      const code = poses[d]?.[s]?.code ?? 0;
      return code === 0 ? [] : [reason(placementReason(code), input.path, { driveline: input.driveline.id, state: state.id })];
    }),
  );
  if (impossible.length > 0) return failure(...impossible);
  const states: PredictedState[] = [];
  for (const [s, { id, load }] of model.states.entries()) {
    const drivelines: PredictedDriveline[] = [];
    for (const [d, on] of model.drivelines.entries()) {
      drivelines.push(predictDriveline(on, rephased(model, d, amounts), poses[d]?.[s] as PredictedPoses, load, options));
      yield;
    }
    states.push({ id, drivelines });
  }
  const caster = casterReason(model, amounts);
  return success({
    changes,
    states,
    blocked: [...(caster ? [caster] : []), ...slipReasons(model, poses)],
    missing: missingMeasurements(model, amounts),
    leftOut: model.leftOut,
  });
}

function predictDriveline(
  on: DrivelineModel,
  driveline: Driveline,
  { poses, slip, slipBy }: PredictedPoses,
  load: AxleLoad,
  options: { readonly draws: number; readonly seed: number },
): PredictedDriveline {
  const known = on.topology.full && on.input.driveline.sections.length > 0;
  const slipTravel = known ? linearEstimate(slip, slipBy, poses.sources, options) : null;
  const limits = slipKnown(on) ? slipOf(on) : null;
  const travel = limits ? { maximum: (limits.engaged ?? 0) - (limits.minimumEngaged ?? 0), minimum: -(limits.inwardTravel ?? 0) } : null;
  return {
    ...predictedAnalysis(on.input, driveline, poses, load, options),
    slipTravel,
    slipVerdict: travel ? estimateVerdict(slipTravel, travel) : "not-gauged",
    geometry: on.topology.full && (on.topology.armKnown || on.input.driveline.sections.length === 0) ? "full" : "angles-only",
  };
}

/** The driveline with its phasings after the changes. */
export function rephased(model: CorrectionModel, d: number, amounts: ArrayLike<number>): Driveline {
  const { driveline } = (model.drivelines[d] as DrivelineModel).input;
  return {
    ...driveline,
    sections: driveline.sections.map((section, s) => {
      if (section.phasing === null) return section;
      const turn = model.adjusters.reduce((sum, { adjuster, place, drivelines }, k) => {
        const here = adjuster.kind === "rephase" && drivelines.includes(d) && place === s;
        return here ? sum + ((amounts[k] as number) * 2 * Math.PI) / adjuster.splineTeeth : sum;
      }, 0);
      return { ...section, phasing: (section.phasing + turn) as Radians };
    }),
  };
}

const slipReasons = (model: CorrectionModel, poses: readonly (readonly PredictedPoses[])[]): readonly Reason[] =>
  model.drivelines.flatMap((on, d) =>
    model.states.flatMap((state, s) => {
      const slip = slipOf(on);
      const travel = poses[d]?.[s]?.slip ?? 0;
      const code = on.topology.full ? slipBlocks(slip, travel) : null;
      const params = {
        driveline: on.input.driveline.id,
        state: state.id,
        section: slip?.sectionId ?? "",
        slipTravelMm: toMillimetres(travel),
      };
      return code ? [reason(code, on.input.path, params)] : [];
    }),
  );
