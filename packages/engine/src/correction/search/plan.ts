import { disturbingJoints, isBetween } from "../../kinematics/index.js";
import { inPieces, type PausedWork, scaledSteps } from "../../uncertainty/index.js";
import { planInstructions } from "../consequence/plan-instructions.js";
import type { AdjusterModel } from "../geometry/adjuster-model.js";
import { type CorrectionModel, correctionModel, refusals } from "../geometry/correction-model.js";
import { drawRecords } from "../geometry/draw-records.js";
import {
  type AdjusterKind,
  type CorrectionInput,
  failure,
  type Outcome,
  type Reason,
  type ReasonCode,
  reason,
  success,
} from "../model/index.js";
import { type MissingMeasurement, missingMeasurements } from "../predict/missing-measurements.js";
import { predictSteps } from "../predict/predict.js";
import { bestFirst, type Ranked } from "./best-first.js";
import { blocksOf, nearestOpen } from "./blocks.js";
import { type CandidateSpace, candidateSpace, type Subset, writeAmounts } from "./candidate-space.js";
import { choiceOf } from "./choice.js";
import { type ContinuousOptimum, continuousOptimum } from "./continuous-optimum.js";
import { hardReasons, type Judge, newJudge } from "./judge.js";
import { limitReport, type StateLimitUse } from "./limit-report.js";
import { type MarginTable, marginTable } from "./margin-table.js";
import type { Plan, PlanOptions, PlanResult, RankedChoice } from "./plan-result.js";
import { compareByEffect, compareKeys, helpsMore, type KeyOrder } from "./rank-key.js";

/** More combinations than this are refused: narrow the stock or allow fewer changes at once. */
export const MAXIMUM_COMBINATIONS = 1_000_000;

/** Share of the progress that the first, exact pass over all candidates stands for. */
const TABLE_SHARE = 0.7;
/** Shown while the plans are worked out that were found. */
const LATE = 0.95;

/** Changes that take the axle off its springs or links. */
export const AXLE_KINDS: readonly AdjusterKind[] = ["axle-wedge", "link-length", "ride-height"];

/**
 * The best corrections from the stock, for all states together: exact, whatever the size of the stock up to a million combinations.
 *
 * Ranked by (1) the share of common random draws in which every limit holds in every state, (2) labour and parts, (3) the smallest share of any limit left at
 * the best estimate (before labour where the share is nought); ties by fewer changes, smaller total |amount|/step, ids. Candidates that break a hard limit (slip travel, removal beyond what is fitted,
 * caster, geometry that cannot stand) at the best estimate are left out. A driveline under a stop finding, or with a
 * shaft not gauged, is left out with all that moves it. Refuses with reasons when nothing is left, and on a phasing not measured.
 * Rejects with the signal's own reason when stopped, within 100 ms.
 */
export const plan = (input: CorrectionInput, options: PlanOptions = {}, work: PausedWork = {}): Promise<Outcome<PlanResult>> =>
  inPieces(planSteps(input, options), work);

/** The work of `plan` in pieces of some 20 ms; every `next` yields the share done. */
export function* planSteps(input: CorrectionInput, options: PlanOptions = {}): Generator<number, Outcome<PlanResult>> {
  const refused = refusals(input);
  if (refused.length > 0) return failure(...refused);
  const { maxChanges = 2, keep = [], count = 3, rankDraws = 500, detailDraws = 2000 } = options;
  const model = correctionModel(input);
  const unmeasured = unmeasuredPhasings(model.input);
  if (unmeasured.length > 0) return failure(...unmeasured);
  if (model.leftOut.length > 0 && model.adjusters.every(({ unusable }) => unusable)) return failure(...model.leftOut);
  const space = candidateSpace(model, maxChanges, ({ adjuster }) => !keep.includes(adjuster.id) && !keep.includes(adjuster.kind));
  if (space.size > MAXIMUM_COMBINATIONS)
    return failure(reason("correction.too-many-combinations", "adjusters", { combinations: space.size }));

  const judge = newJudge(model, drawRecords(model, rankDraws, input.seed));
  const standing = standingReasons(judge);
  if (standing.length > 0) return failure(...standing);
  yield 0;
  const table = yield* scaledSteps(marginTable(judge, space), 0, TABLE_SHARE / space.size);
  const ranked = yield* ranking(judge, space, table, count, () => true);
  const single = yield* ranking(judge, space, table, 1, ({ adjusters }) => adjusters.length === 1, compareByEffect);
  const noAxle = yield* ranking(judge, space, table, 1, (subset) => subset.adjusters.length > 0 && !touchesAxle(model, subset));
  const idle = yield* ranking(judge, space, table, 1, ({ adjusters }) => adjusters.length === 0);

  const plans: Plan[] = [];
  for (const found of ranked) plans.push(yield* detailed(judge, found, { draws: detailDraws, seed: input.seed }));

  const nearest = nearestOpen(space, table);
  const feasible = nearest !== null && marginAt(nearest.subset, table, nearest.places) >= 0;
  const blocks = feasible ? [] : yield* progressing(blocksOf(judge, space, table, nearest));
  const optima: ContinuousOptimum[] = [];
  for (const k of model.adjusters.keys()) {
    const optimum = continuousOptimum(judge, k);
    if (optimum) optima.push(optimum);
    yield LATE;
  }
  const missing = yield* progressing(missingFor(model, ranked));
  const choice = (found: readonly Ranked[]): RankedChoice | null => (found[0] ? choiceOf(judge, found[0]) : null);
  const nearestRanked = feasible || !nearest ? null : ((yield* one(judge, space, table, nearest.subset, nearest.places)) ?? null);
  return success({
    examined: space.size,
    plans,
    blockedBy: blocks,
    nearest: nearestRanked && choiceOf(judge, nearestRanked),
    doingNothing: {
      ...(choice(idle) ?? { changes: [], probabilityWithin: 0, probabilityOfLimits: 0, labour: 0, margin: Number.NEGATIVE_INFINITY }),
      tightest: tightestOf(limitReport(judge, new Float64Array(model.adjusters.length))),
    },
    bestSingleChange: single[0] && (!idle[0] || helpsMore(single[0].key, idle[0].key)) ? choiceOf(judge, single[0]) : null,
    bestWithoutAxle: choice(noAxle),
    optima,
    missing,
    notUsed: model.adjusters.flatMap(({ unusable }) => (unusable ? [unusable] : [])),
    leftOut: model.leftOut,
  });
}

function* ranking(
  judge: Judge,
  space: CandidateSpace,
  table: MarginTable,
  count: number,
  allowed: (subset: Subset) => boolean,
  order: KeyOrder = compareKeys,
): Generator<number, readonly Ranked[]> {
  const found: Ranked[] = [];
  if (count === 0) return found;
  for (const step of bestFirst(judge, space, table, allowed, order)) {
    if (step) found.push(step);
    else yield TABLE_SHARE;
    if (found.length === count) break;
  }
  return found;
}

/** One given candidate with its probability. */
function* one(
  judge: Judge,
  space: CandidateSpace,
  table: MarginTable,
  subset: Subset,
  places: Int32Array,
): Generator<number, Ranked | undefined> {
  const lone: Subset = {
    ...subset,
    amounts: subset.amounts.map((amounts, k) => [amounts[places[k] as number] as number]),
    size: 1,
    offset: 0,
  };
  const margins = new Float64Array([marginAt(subset, table, places)]);
  const found = yield* ranking(judge, { subsets: [lone], size: space.size }, { margins, open: 1 }, 1, () => true);
  return found[0];
}

const marginAt = (subset: Subset, table: MarginTable, places: ArrayLike<number>): number =>
  table.margins[subset.offset + subset.amounts.reduce((index, { length }, k) => index * length + (places[k] as number), 0)] as number;

function* detailed(judge: Judge, found: Ranked, options: { readonly draws: number; readonly seed: number }): Generator<number, Plan> {
  const { model } = judge;
  const amounts = new Float64Array(model.adjusters.length);
  const before = limitReport(judge, amounts);
  writeAmounts(found.subset, found.places, amounts);
  const after = limitReport(judge, amounts);
  const choice = choiceOf(judge, found);
  const predicted = yield* progressing(predictSteps(model, amounts, choice.changes, options));
  return {
    ...choice,
    tightest: tightestOf(after),
    states: predicted.ok ? predicted.value.states : [],
    instructions: planInstructions(model, choice.changes, before, after),
  };
}

const CANNOT_STAND: readonly ReasonCode[] = [
  "correction.spacer-out-of-reach",
  "correction.guide-out-of-reach",
  "correction.shaft-out-of-reach",
];

/** Why the vehicle as it is could not stand in one of its states: then the case contradicts itself, and no change can be judged. */
function standingReasons(judge: Judge): readonly Reason[] {
  judge.amounts.fill(0);
  return hardReasons(judge).filter(({ code }) => CANNOT_STAND.includes(code));
}

const tightestOf = (uses: readonly StateLimitUse[]): StateLimitUse | null =>
  uses.reduce<StateLimitUse | null>((least, use) => (least && least.margin <= use.margin ? least : use), null);

/** Late work cannot say how far it is. */
function* progressing<Result>(steps: Generator<void, Result>): Generator<number, Result> {
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value;
    yield LATE;
  }
}

/** What is missing for any of the plans, each with the most that it could move one of them. */
function* missingFor(model: CorrectionModel, plans: readonly Ranked[]): Generator<void, readonly MissingMeasurement[]> {
  const amounts = new Float64Array(model.adjusters.length);
  const most = new Map<string, MissingMeasurement>();
  for (const { subset, places } of plans) {
    writeAmounts(subset, places, amounts);
    for (const missing of missingMeasurements(model, amounts)) {
      const key = `${missing.path} ${missing.of}`;
      if ((missing.effect ?? 0) >= (most.get(key)?.effect ?? 0)) most.set(key, missing);
    }
    yield;
  }
  return [...most.values()].sort((a, b) => (b.effect ?? 0) - (a.effect ?? 0));
}

const touchesAxle = ({ adjusters }: CorrectionModel, subset: Subset): boolean =>
  subset.adjusters.some((k) => AXLE_KINDS.includes((adjusters[k] as AdjusterModel).adjuster.kind));

/** A plan built on a phasing that nobody measured would be a guess; with a single disturbing joint it changes nothing. */
const unmeasuredPhasings = ({ drivelines }: CorrectionInput): readonly Reason[] =>
  drivelines.flatMap(({ driveline, path }) => {
    const disturbing = disturbingJoints(driveline);
    return driveline.sections.flatMap(({ id, phasing, phasingMeasured }, s) =>
      isBetween(s, disturbing) && (phasing === null || !phasingMeasured)
        ? [reason("correction.phasing-not-measured", `${path}.sections[${s}]`, { driveline: driveline.id, section: id })]
        : [],
    );
  });
