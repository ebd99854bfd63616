import type { CaseGauge, CaseGauging, CaseHeading, CaseReading } from "@halfturn/casefile";

/** A digital inclinometer that reads alike on both sides of the check. */
export const GOOD_GAUGE: CaseGauge = {
  label: "Digital inclinometer 2",
  resolutionDeg: 0.1,
  accuracyDeg: 0.1,
  common: false,
  zeroCheck: [
    { deg: 0.2, lower: "display-right" },
    { deg: 0.2, lower: "display-left" },
  ],
};

/** A pendulum gauge with a scale of half degrees. */
export const COARSE_GAUGE: CaseGauge = {
  label: "Pendulum gauge",
  resolutionDeg: 0.5,
  accuracyDeg: 0.5,
  common: false,
  zeroCheck: [
    { deg: 0.5, lower: "display-right" },
    { deg: 0.5, lower: "display-left" },
  ],
};

/** Along a shaft; a positive number means that the driven end is lower. */
export const along = (at: string, inclinationDeg: number): CaseReading => ({
  at,
  deg: Math.abs(inclinationDeg),
  ...(inclinationDeg === 0 ? {} : { lower: inclinationDeg > 0 ? "driven-end" : "source-end" }),
  side: "left",
});

/** Both ends of one tube. */
export const bothEnds = (section: string, inclinationDeg: number): readonly CaseReading[] => [
  along(`${section}:source-end`, inclinationDeg),
  along(`${section}:driven-end`, inclinationDeg),
];

/** A face across the shaft; positive as along the shaft. */
export const face = (at: string, inclinationDeg: number): CaseReading => ({
  at,
  face: "square",
  deg: Math.abs(inclinationDeg),
  ...(inclinationDeg === 0 ? {} : { topLeans: inclinationDeg > 0 ? "driven-end" : "source-end" }),
  side: "left",
});

/** A shaft that runs straight along the vehicle. */
export const straight = (of: string, overMm: number): CaseHeading => ({ of, lateralMm: 0, overMm, accuracyMm: 2 });

/** At ride height on a drive-on lift, unless said otherwise. */
export const gauged = (
  driveline: string,
  takenAt: string,
  readings: readonly CaseReading[],
  headings: readonly CaseHeading[],
  more: Partial<CaseGauging> = {},
): CaseGauging => ({
  driveline,
  stage: "as-found",
  takenAt,
  state: { rideHeight: "normal", wheels: "on-drive-on-lift" },
  gauge: GOOD_GAUGE,
  readings,
  headings,
  ...more,
});
