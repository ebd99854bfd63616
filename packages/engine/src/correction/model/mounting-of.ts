import type { Adjuster } from "./adjuster.js";
import type { CorrectionDriveline } from "./correction-driveline.js";

/** How the bearing that an adjuster lowers is mounted, which says which way its spacers can be taken out; null where it moves none, or nobody looked. */
export const mountingOf = (
  adjuster: Adjuster,
  { drivelines }: { readonly drivelines: readonly CorrectionDriveline[] },
): CorrectionDriveline["supports"][number]["mounted"] =>
  adjuster.kind === "support-drop"
    ? (drivelines
        .find(({ driveline }) => driveline.id === adjuster.drivelineId)
        ?.supports.find(({ jointId }) => jointId === adjuster.jointId)?.mounted ?? null)
    : null;
