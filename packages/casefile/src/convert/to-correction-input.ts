import {
  type CorrectionDriveline,
  type CorrectionInput,
  DEFAULT_ACCURACY,
  type GeometryAccuracy,
  type LearnedGeometry,
  type Powertrain,
  type Slip,
  type Support,
  type VehiclePoint,
  type VehicleState,
} from "@halfturn/engine/correction";
import type { FindingCode } from "@halfturn/engine/findings";
import { fuseGauging } from "@halfturn/engine/gauging";
import type { LimitSet } from "@halfturn/engine/limits";
import { degreesToRadians, type Metres } from "@halfturn/engine/units";
import { fittedSince } from "../correction/fitted-since.js";
import type { Case, CaseDriveline, CaseState } from "../schema/case.js";
import { itemAt } from "./item-at.js";
import { type ChosenGauging, latestGaugings } from "./latest-gaugings.js";
import { fromMillimetres } from "./lengths.js";
import { toAdjuster } from "./to-adjuster.js";
import { acceptedCodes, maxShaftSpeed } from "./to-analysis-input.js";
import { toAxle } from "./to-axle.js";
import { toDriveline } from "./to-driveline.js";
import { toGauging } from "./to-gauging.js";
import { toLimits } from "./to-limits.js";

export interface CorrectionSettings {
  readonly defaults: LimitSet;
  readonly draws: number;
  readonly seed: number;
  /** The gauging that speaks for each driveline; the last one of its latest stage when left out. */
  readonly chosen?: readonly ChosenGauging[] | undefined;
  /** Stop findings accepted just now, beside those that the case records. */
  readonly accepted?: readonly FindingCode[] | undefined;
  readonly accuracy?: GeometryAccuracy | undefined;
  readonly learned?: LearnedGeometry | undefined;
}

/**
 * What the engine needs to predict and plan: SI and radians, with what nobody measured left null. A driveline that was never gauged is left out, as nothing can be
 * said of it. What is fitted counts the corrections made before the gauging.
 */
export function toCorrectionInput(document: Case, settings: CorrectionSettings): CorrectionInput {
  const chosen = settings.chosen ?? latestGaugings(document);
  const gauged = chosen.filter((one): one is ChosenGauging & { readonly gauging: number } => one.gauging !== null);
  const accepted = [...acceptedCodes(document), ...(settings.accepted ?? [])];
  const powertrain = document.vehicle?.powertrain;
  return {
    drivelines: gauged.map((one) => toCorrectionDriveline(document, one, accepted, settings.defaults)),
    powertrain: powertrain ? toMounts(powertrain) : null,
    adjusters: (document.adjusters ?? []).map((adjuster, k) =>
      toAdjuster(adjuster, `adjusters[${k}]`, fittedSince(document, adjuster.id, gauged)),
    ),
    states: (document.states ?? []).map(toState),
    accuracy: settings.accuracy ?? DEFAULT_ACCURACY,
    ...(settings.learned ? { learned: settings.learned } : {}),
    draws: settings.draws,
    seed: settings.seed,
  };
}

function toCorrectionDriveline(
  document: Case,
  { driveline: index, gauging }: ChosenGauging & { readonly gauging: number },
  accepted: readonly FindingCode[],
  defaults: LimitSet,
): CorrectionDriveline {
  const written = itemAt(document.drivelines, index, "drivelines");
  const driveline = toDriveline(document, index, gauging);
  const poses = fuseGauging(toGauging(document, gauging), driveline);
  return {
    driveline,
    runs: written.runs,
    poses,
    supports: toSupports(written),
    slips: toSlips(written),
    axle: written.axle ? toAxle(written.axle) : null,
    firstJoint: index === 0 ? ORIGIN : toPoint(written),
    limits: toLimits(document, defaults),
    maxShaftSpeed: maxShaftSpeed(document),
    refused: poses.findings.some(({ code, severity }) => severity === "stop" && !accepted.includes(code)),
    path: `drivelines[${index}]`,
  };
}

const ORIGIN: VehiclePoint = { forward: 0 as Metres, left: 0 as Metres, up: 0 as Metres };

const toPoint = ({ firstJoint }: CaseDriveline): VehiclePoint | null =>
  firstJoint
    ? {
        forward: fromMillimetres(firstJoint.forwardMm),
        left: fromMillimetres(firstJoint.leftMm ?? 0),
        up: fromMillimetres(firstJoint.upMm),
      }
    : null;

/** A bearing whose side is not written hangs before its joint, as most do (common practice, no source). */
const toSupports = ({ joints }: CaseDriveline): readonly Support[] =>
  joints.flatMap(({ id, support }) =>
    support
      ? [
          {
            jointId: id,
            bearingToJoint: lengthOrNull(support.bearingToJointMm),
            bearingIs: support.bearingIs ?? "source-side",
            mounted: support.bearingMounted ?? null,
          },
        ]
      : [],
  );

const toSlips = ({ sections }: CaseDriveline): readonly Slip[] =>
  sections.flatMap(({ id, slip }) =>
    slip
      ? [
          {
            sectionId: id,
            engaged: lengthOrNull(slip.engagedMm),
            minimumEngaged: lengthOrNull(slip.minimumEngagedMm),
            inwardTravel: lengthOrNull(slip.inwardTravelMm),
          },
        ]
      : [],
  );

const lengthOrNull = (lengthMm: number | undefined): Metres | null => (lengthMm === undefined ? null : fromMillimetres(lengthMm));

const toMounts = (at: NonNullable<NonNullable<Case["vehicle"]>["powertrain"]>): Powertrain => ({
  pivotForward: fromMillimetres(at.pivotForwardMm),
  pivotUp: fromMillimetres(at.pivotUpMm),
  mountForward: fromMillimetres(at.mountForwardMm),
  mountUp: fromMillimetres(at.mountUpMm),
});

const toState = ({ id, driveline, axleTravelMm, pinionPitchDeg, load }: CaseState): VehicleState => ({
  id,
  drivelineId: driveline ?? null,
  axleTravel: fromMillimetres(axleTravelMm ?? 0),
  pinionPitch: pinionPitchDeg === undefined ? null : degreesToRadians(pinionPitchDeg),
  load: load ?? "none",
});
