import type { AnalysisInput } from "@halfturn/engine/analysis";
import { FINDING_CODES, type FindingCode } from "@halfturn/engine/findings";
import type { Gauging } from "@halfturn/engine/gauging";
import type { LimitSet } from "@halfturn/engine/limits";
import { degreesToRadians, type Rpm, rpm } from "@halfturn/engine/units";
import type { Case } from "../schema/case.js";
import type { ChosenGauging } from "./latest-gaugings.js";
import { toDriveline } from "./to-driveline.js";
import { toGauging } from "./to-gauging.js";
import { toLimits } from "./to-limits.js";

export interface AnalysisSettings {
  readonly defaults: LimitSet;
  readonly draws: number;
  readonly seed: number;
  /** Stop findings accepted just now, beside those that the case records. */
  readonly accepted?: readonly FindingCode[];
}

/** What the engine needs to judge one driveline of a case by one gauging. A driveline never gauged is asked about with no readings at all. */
export function toAnalysisInput(document: Case, chosen: ChosenGauging, settings: AnalysisSettings): AnalysisInput {
  const path = `drivelines[${chosen.driveline}]`;
  return {
    driveline: toDriveline(document, chosen.driveline, chosen.gauging),
    gauging: chosen.gauging === null ? nothingGauged(path) : toGauging(document, chosen.gauging),
    limits: toLimits(document, settings.defaults),
    maxShaftSpeed: maxShaftSpeed(document),
    accepted: [...new Set([...acceptedCodes(document), ...(settings.accepted ?? [])])],
    draws: settings.draws,
    seed: settings.seed,
    path,
  };
}

export function maxShaftSpeed(document: Case): Rpm | null {
  const speed = document.vehicle?.maxShaftSpeedRpm;
  return speed === undefined ? null : rpm(speed);
}

/** The stop findings that the case records as accepted. A code that no finding has any more accepts nothing. */
export const acceptedCodes = (document: Case): readonly FindingCode[] =>
  FINDING_CODES.filter((code) => (document.acceptedFindings ?? []).some((accepted) => accepted.code === code));

const nothingGauged = (path: string): Gauging => ({
  rideHeight: "normal",
  wheels: "on-ground",
  gauge: { resolution: degreesToRadians(0.1), accuracy: degreesToRadians(0), common: false, zeroCheck: [] },
  readings: [],
  headings: [],
  path,
});
