import type { DrivelineAnalysis, Estimate, SpeedResult } from "@halfturn/engine/analysis";
import type { LimitSet } from "@halfturn/engine/limits";
import type { DrivelinePicture } from "../driveline/driveline-picture.js";
import { usable } from "../estimate-text.js";
import type { FigureLabels } from "../figure-labels.js";

export interface AccelerationPoint {
  readonly rpm: number;
  readonly estimate: Estimate;
}

export interface AccelerationSeries {
  readonly name: string;
  readonly points: readonly AccelerationPoint[];
  /** Place in the colours; null = the driven end or the source, drawn in ink. */
  readonly section: number | null;
}

export interface AccelerationLimit {
  readonly name: string;
  readonly value: number;
  readonly grave: boolean;
}

/** One small chart: lines that share a limit. */
export interface AccelerationPanel {
  readonly title: string;
  readonly series: readonly AccelerationSeries[];
  readonly unknown: readonly string[];
  readonly limits: readonly AccelerationLimit[];
}

export type AccelerationLimits = Pick<LimitSet, "drivenAccelerationWarn" | "drivenAccelerationOver" | "inertiaDrive" | "inertiaCoast">;

function pointsOf(
  speeds: readonly SpeedResult[],
  pick: (result: SpeedResult) => Estimate | null | undefined,
): readonly AccelerationPoint[] {
  return speeds.flatMap((result) => {
    const estimate = pick(result);
    return usable(estimate) && Number.isFinite(result.shaftSpeed) ? [{ rpm: result.shaftSpeed, estimate }] : [];
  });
}

/** The analysis, sorted into the charts of the driven end, of the sections on drive, and of sections and source on coast. */
export function accelerationPanels(
  { driveline, names, analysis }: DrivelinePicture,
  limits: AccelerationLimits,
  labels: FigureLabels,
): readonly AccelerationPanel[] {
  const speeds = (analysis as DrivelineAnalysis | null)?.motion.speeds ?? [];
  const name = (id: string): string => names.sections[id] ?? id;
  const section = (way: "drive" | "coast"): AccelerationSeries[] =>
    driveline.sections.map(({ id }, k) => ({
      name: name(id),
      section: k,
      points: pointsOf(speeds, (result) => result[way].find((entry) => entry.section === id)?.acceleration),
    }));
  const panel = (title: string, series: readonly AccelerationSeries[], of: readonly AccelerationLimit[]): AccelerationPanel => ({
    title,
    series: series.filter(({ points }) => points.length > 0),
    unknown: series.filter(({ points }) => points.length === 0).map((one) => one.name),
    limits: of,
  });
  const driven = { name: labels.drivenEnd, section: null, points: pointsOf(speeds, (result) => result.drivenAcceleration) };
  const source = { name: labels.sourceOnCoast, section: null, points: pointsOf(speeds, (result) => result.sourceAccelerationCoast) };
  return [
    panel(
      labels.drivenEnd,
      [driven],
      [
        { name: labels.limitWarn, value: limits.drivenAccelerationWarn.value, grave: false },
        { name: labels.limitOver, value: limits.drivenAccelerationOver.value, grave: true },
      ],
    ),
    ...(driveline.sections.length > 0
      ? [panel(labels.driveMotion, section("drive"), [{ name: labels.limitOver, value: limits.inertiaDrive.value, grave: true }])]
      : []),
    panel(labels.coastMotion, [...section("coast"), source], [{ name: labels.limitOver, value: limits.inertiaCoast.value, grave: true }]),
  ];
}
