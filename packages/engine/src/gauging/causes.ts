import type { Observation } from "./observation.js";
import type { Slip } from "./slip.js";

/** What may stand behind a contradiction, as a code for the catalogue of words. */
export const CAUSES = [
  "lower-end",
  "side",
  "rows-swapped",
  "not-zeroed",
  "rust-or-paint",
  "bent-tube",
  "not-on-machined-face",
  "face-not-square",
  "not-same-spot",
  "misread",
  "zero-far-off",
] as const;

export type Cause = (typeof CAUSES)[number];

/** What can hold a gauge off the true line at the place it sat on (common practice, no source). */
function causesAtSpot(observation: Observation): readonly Cause[] {
  if (observation.kind === "zero-check") return ["not-same-spot", "rust-or-paint"];
  if (observation.kind !== "absolute") return ["rust-or-paint", "not-on-machined-face"];
  const { place, shaft } = observation.reading;
  if (place === "face") return ["not-on-machined-face", "rust-or-paint", "face-not-square"];
  const isSection = shaft !== "source" && shaft !== "driven";
  return isSection ? ["rust-or-paint", "bent-tube", "not-on-machined-face"] : ["not-on-machined-face", "rust-or-paint", "face-not-square"];
}

function causesOfSlip({ kind, blames }: Slip, observations: readonly Observation[]): readonly Cause[] {
  if (kind !== "spot") return [kind];
  return blames.flatMap((index) => {
    const observation = observations[index];
    return observation ? causesAtSpot(observation) : [];
  });
}

/** The causes behind explanations, likeliest first, each once. */
export const causesOf = (slips: readonly Slip[], observations: readonly Observation[]): readonly Cause[] => [
  ...new Set(slips.flatMap((slip) => causesOfSlip(slip, observations))),
];
