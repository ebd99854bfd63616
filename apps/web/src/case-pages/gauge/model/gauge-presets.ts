import type { CaseGauge, CaseGauging } from "@halfturn/casefile";

/** A digital inclinometer as most shops have (common practice, no source). */
export const USUAL_GAUGE: CaseGauge = { resolutionDeg: 0.1, accuracyDeg: 0.1 };

/** A phone on its edge, after the turn-round check took its zero out (common practice, no source). */
export const PHONE_GAUGE: CaseGauge = { label: "Phone", resolutionDeg: 0.1, accuracyDeg: 0.3 };

export const isPhone = ({ label }: CaseGauge): boolean => label === PHONE_GAUGE.label;

/** The gauge that was used last in this case, as it stands; its zero may have moved since, so its check is not carried over. */
export function lastGauge(gaugings: readonly CaseGauging[]): CaseGauge {
  const last = gaugings.at(-1)?.gauge;
  if (!last) return USUAL_GAUGE;
  const { zeroCheck: _, ...bare } = last;
  return bare;
}

export const RESOLUTIONS_DEG = [0.05, 0.1, 0.5, 1] as const;
export const ACCURACIES_DEG = [0.05, 0.1, 0.2, 0.3, 0.5] as const;
