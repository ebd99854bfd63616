import type { PoseModel } from "../../gauging/index.js";
import { shaftIds } from "../../kinematics/index.js";
import { type CorrectionModel, correctionModel, type DrivelineModel, refusals } from "../geometry/correction-model.js";
import { type AdjusterKind, type Change, failure, type Outcome, success } from "../model/index.js";
import { checkChanges } from "../predict/check-changes.js";
import { predictedPoses } from "../predict/predicted-poses.js";
import type { BeforeAfter } from "./learn-geometry.js";

/** What to look at when a vehicle does not stand as predicted. Words for each stand in the catalogue of every language. */
export const LOOK_CODES = [
  "thick-end-turned-round",
  "change-not-taken",
  "amount-fitted-differs",
  "axle-not-seated",
  "bearing-to-joint-length",
  "lengths-and-arms",
  "other-ride-height",
  "moved-without-a-change",
  "gauge-placing",
] as const;
export type LookCode = (typeof LOOK_CODES)[number];

/** One shaft, predicted against gauged after the change; radians. */
export interface ShaftVerdict {
  readonly drivelineId: string;
  readonly shaft: string;
  readonly before: number;
  readonly predicted: number;
  readonly measured: number;
  /** Combined standard uncertainty of the difference. */
  readonly u: number;
  readonly agrees: boolean;
}

export interface PredictionVerdict {
  readonly shafts: readonly ShaftVerdict[];
  /** confirmed: every shaft stands as predicted within the uncertainty of both. */
  readonly verdict: "confirmed" | "differs" | "not-gauged";
  /** What to look at, likeliest first; empty when confirmed. */
  readonly lookAt: readonly LookCode[];
}

/** 95 % of a normal difference. */
const COVERAGE_FACTOR = 1.959963984540054;
/** Differences that are smaller count as none, rad: a hundredth of a degree, below any gauge's step. */
const NO_DIFFERENCE = 1.7e-4;

/** Holds a prediction against what was gauged after. Refuses as `predict` does. */
export function judgePrediction({ before, changes, after }: BeforeAfter): Outcome<PredictionVerdict> {
  const refused = refusals(before);
  if (refused.length > 0) return failure(...refused);
  const model = correctionModel({ ...before, states: [] });
  const checked = checkChanges(model, changes);
  if (!checked.ok) return checked;
  const predicted = predictedPoses(model, checked.value);
  const shafts = model.drivelines.flatMap((on, d): readonly ShaftVerdict[] => {
    const poses = predicted[d]?.[0]?.poses;
    const gauged = after[on.input.driveline.id];
    return poses && gauged ? shaftVerdicts(on, poses, gauged) : [];
  });
  const differing = shafts.filter(({ agrees }) => !agrees);
  return success({
    shafts,
    verdict: shafts.length === 0 ? "not-gauged" : differing.length === 0 ? "confirmed" : "differs",
    lookAt: differing.length === 0 ? [] : lookAt(model, changes, differing),
  });
}

function shaftVerdicts(
  { input: { driveline, poses: before } }: DrivelineModel,
  predicted: PoseModel,
  gauged: PoseModel,
): readonly ShaftVerdict[] {
  return shaftIds(driveline).flatMap((shaft, s) => {
    const row = gauged.shafts.indexOf(shaft);
    const measured = gauged.inclination[row];
    if (measured == null) return [];
    const u = Math.hypot(spread(predicted, s), spread(gauged, row));
    const value = predicted.inclination[s] ?? 0;
    const agrees = Math.abs(measured - value) <= Math.max(NO_DIFFERENCE, COVERAGE_FACTOR * u);
    return [
      {
        drivelineId: driveline.id,
        shaft,
        before: before.inclination[before.shafts.indexOf(shaft)] ?? 0,
        predicted: value,
        measured,
        u,
        agrees,
      },
    ];
  });
}

const spread = ({ sources, inclinationBy }: PoseModel, s: number): number =>
  Math.hypot(...sources.map(({ u }, k) => (inclinationBy[s]?.[k] ?? 0) * u));

function lookAt(model: CorrectionModel, changes: readonly Change[], differing: readonly ShaftVerdict[]): readonly LookCode[] {
  const used = new Set(
    changes.flatMap(({ adjusterId }) => model.adjusters.find(({ adjuster }) => adjuster.id === adjusterId)?.adjuster.kind ?? []),
  );
  const has = (...kinds: readonly AdjusterKind[]): boolean => kinds.some((kind) => used.has(kind));
  const codes = differing.flatMap((verdict): readonly LookCode[] => {
    const expected = verdict.predicted - verdict.before;
    const got = verdict.measured - verdict.before;
    const within = COVERAGE_FACTOR * verdict.u;
    if (Math.abs(expected) <= within) return ["moved-without-a-change", "other-ride-height"];
    if (verdict.shaft === "driven" && has("axle-wedge") && Math.abs(got + expected) <= 2 * within) return ["thick-end-turned-round"];
    if (Math.abs(got) <= within) return ["change-not-taken"];
    if (verdict.shaft === "driven" && has("axle-wedge", "link-length")) return ["axle-not-seated", "amount-fitted-differs"];
    if (verdict.shaft !== "driven" && verdict.shaft !== "source" && has("support-drop", "support-shift"))
      return ["bearing-to-joint-length", "amount-fitted-differs"];
    return ["lengths-and-arms", "amount-fitted-differs"];
  });
  return [...new Set<LookCode>([...codes, "other-ride-height", "gauge-placing"])].sort(
    (a, b) => LOOK_CODES.indexOf(a) - LOOK_CODES.indexOf(b),
  );
}
