import type { CaseGauge } from "@halfturn/casefile";

export type DisplaySide = "display-left" | "display-right";
export type ZeroReading = NonNullable<CaseGauge["zeroCheck"]>[number];

export const zeroReading = (deg: number, lower: DisplaySide | null): ZeroReading =>
  deg === 0 || lower === null ? { deg } : { deg, lower };

const signedDeg = ({ deg, lower }: ZeroReading): number => (lower === "display-left" ? -deg : deg);

/**
 * What the gauge adds to every reading: half the sum of a reading and the one with the gauge turned round on the same spot, display-right lower positive.
 * The mean over all pairs, in degrees; null where there is no whole pair. Turning round on one spot: the reversal method (Evans, Hocken and Estler, CIRP Annals 45/2, 1996; from memory).
 */
export function zeroFound(readings: readonly ZeroReading[]): number | null {
  const whole = readings.length - (readings.length % 2);
  if (whole === 0) return null;
  return readings.slice(0, whole).reduce((sum, reading) => sum + signedDeg(reading), 0) / whole;
}

/** Adds a reading and its turned partner; earlier pairs stay and are averaged with them. */
export function withZeroPair(gauge: CaseGauge, first: ZeroReading, turned: ZeroReading): CaseGauge {
  return { ...gauge, zeroCheck: [...(gauge.zeroCheck ?? []), first, turned] };
}

export function withoutZeroCheck(gauge: CaseGauge): CaseGauge {
  const { zeroCheck: _, ...bare } = gauge;
  return bare;
}
