import type { Estimate, SpeedResult, Verdict } from "@halfturn/engine/analysis";
import { verdictAgainst } from "./estimates.js";
import type { Subject } from "./subject.js";

/** One acceleration at the highest shaft speed, with its limit where it has one. */
export interface AccelerationResult {
  readonly quantity: string;
  readonly estimate: Estimate | null;
  readonly limit: number | null;
  /** From here on a caution, still below the limit. */
  readonly caution: number | null;
  /** null where no limit is set. */
  readonly verdict: Verdict | null;
}

/** The speeds rise; the last one is the highest in use. */
export const highestSpeed = ({ analysis }: Subject): SpeedResult | null => analysis.motion.speeds.at(-1) ?? null;

export function accelerationsAtHighestSpeed(subject: Subject): readonly AccelerationResult[] {
  const { analysis, input, catalogue, words, nameOf } = subject;
  const speed = highestSpeed(subject);
  if (!speed) return [];
  const { limits } = input;
  const against = (quantity: string, estimate: Estimate | null, limit: number, caution: number | null = null): AccelerationResult => ({
    quantity,
    estimate,
    limit,
    caution,
    verdict: verdictAgainst(estimate, limit, analysis.withheld),
  });
  return [
    against(
      catalogue.labels.drivenAcceleration,
      speed.drivenAcceleration,
      limits.drivenAccelerationOver.value,
      limits.drivenAccelerationWarn.value,
    ),
    ...speed.drive.map(({ section, acceleration }) =>
      against(words.tables.driveOf(nameOf(section)), acceleration, limits.inertiaDrive.value),
    ),
    ...speed.coast.map(({ section, acceleration }) =>
      against(words.tables.coastOf(nameOf(section)), acceleration, limits.inertiaCoast.value),
    ),
    {
      quantity: catalogue.labels.sourceAccelerationCoast,
      estimate: speed.sourceAccelerationCoast,
      limit: null,
      caution: null,
      verdict: null,
    },
  ];
}

/** Within its limit, yet it may lie where caution begins. */
export const needsCaution = ({ verdict, estimate, caution }: AccelerationResult): boolean =>
  verdict === "within" && estimate !== null && caution !== null && estimate.high > caution;
