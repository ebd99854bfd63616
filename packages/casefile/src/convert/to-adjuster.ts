import type { Adjuster, Stock } from "@halfturn/engine/correction";
import { degreesToRadians } from "@halfturn/engine/units";
import type { CaseAdjuster } from "../schema/case.js";
import { fromMillimetres } from "./lengths.js";

/** Labour of an adjuster that states none: each then weighs the same, so that fewer changes go first. */
export const LABOUR_NOT_GIVEN = 1;

/**
 * An adjuster of a case as the engine knows it. Its amounts are in words of the vehicle on both sides (nose up, lowered, left, raised), so no sign turns here.
 * `fitted` adds what corrections made since have put in, in the unit of the file.
 */
export function toAdjuster(adjuster: CaseAdjuster, path: string, fittedSince = 0): Adjuster {
  const common = {
    id: adjuster.id,
    labour: adjuster.labour ?? LABOUR_NOT_GIVEN,
    parts: adjuster.parts ?? 0,
    path,
  };
  switch (adjuster.kind) {
    case "axle-wedge":
      return {
        ...common,
        kind: adjuster.kind,
        drivelineId: adjuster.driveline,
        stock: toStock(adjuster.stock),
        fitted: degreesToRadians((adjuster.fittedDeg ?? 0) + fittedSince),
        padLength: adjuster.padLengthMm === undefined ? null : fromMillimetres(adjuster.padLengthMm),
        thinEdge: fromMillimetres(adjuster.thinEdgeMm ?? 0),
      };
    case "rephase":
      return {
        ...common,
        kind: adjuster.kind,
        drivelineId: adjuster.driveline,
        sectionId: adjuster.section,
        splineTeeth: adjuster.splineTeeth,
        // The spline itself says which steps there are.
        stock: { kind: "sizes", sizes: [] },
      };
    default:
      return inMillimetres(adjuster, common, fittedSince);
  }
}

type InMillimetres = Exclude<CaseAdjuster, { readonly kind: "axle-wedge" | "rephase" }>;

function inMillimetres(
  adjuster: InMillimetres,
  common: { readonly id: string; readonly labour: number; readonly parts: number; readonly path: string },
  fittedSince: number,
): Adjuster {
  const base = { ...common, stock: toStock(adjuster.stock) };
  const fitted = fromMillimetres((adjuster.fittedMm ?? 0) + fittedSince);
  switch (adjuster.kind) {
    case "support-drop":
    case "support-shift":
      return { ...base, kind: adjuster.kind, drivelineId: adjuster.driveline, jointId: adjuster.joint, fitted };
    case "mount-spacer":
      return { ...base, kind: adjuster.kind, fitted };
    case "ride-height":
      return { ...base, kind: adjuster.kind, drivelineId: adjuster.driveline, pitchPerMetre: pitchPerMetre(adjuster.pinionPitchDegPerMm) };
    case "link-length":
      return {
        ...base,
        kind: adjuster.kind,
        drivelineId: adjuster.driveline,
        link: adjuster.link,
        pitchPerMetre: pitchPerMetre(adjuster.pinionPitchDegPerMm),
      };
  }
}

const pitchPerMetre = (degPerMm: number | undefined): number | null =>
  degPerMm === undefined ? null : degreesPerMmToRadiansPerMetre(degPerMm);

/** Degrees for each millimetre as radians for each metre. */
export const degreesPerMmToRadiansPerMetre = (degPerMm: number): number => degreesToRadians(degPerMm) * 1000;

function toStock(stock: Extract<CaseAdjuster, { readonly stock: unknown }>["stock"]): Stock {
  if ("sizesDeg" in stock) return { kind: "sizes", sizes: stock.sizesDeg.map(degreesToRadians) };
  if ("sizesMm" in stock) return { kind: "sizes", sizes: stock.sizesMm.map(fromMillimetres) };
  if ("minDeg" in stock) {
    const { minDeg, maxDeg, stepDeg } = stock;
    return { kind: "range", minimum: degreesToRadians(minDeg), maximum: degreesToRadians(maxDeg), step: degreesToRadians(stepDeg) };
  }
  const { minMm, maxMm, stepMm } = stock;
  return { kind: "range", minimum: fromMillimetres(minMm), maximum: fromMillimetres(maxMm), step: fromMillimetres(stepMm) };
}
