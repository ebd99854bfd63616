import { type AxleGuide, chainSign, type Runs } from "../model/index.js";
import { type GuidePlace, newGuidePlace } from "./guide-place.js";
import { leafMove } from "./leaf-move.js";
import { linksMove } from "./links-move.js";

/** The place of the axle with the body raised by `rise` metres over it and the links longer by the given metres. */
export function guideMove(
  guide: AxleGuide | null,
  runs: Runs,
  rise: number,
  lowerLonger: number,
  upperLonger: number,
  out: GuidePlace,
): void {
  out.turn = 0;
  out.forward = 0;
  out.reached = true;
  switch (guide?.kind) {
    case "rate":
      out.turn = chainSign(runs) * guide.pitchPerMetre * rise;
      return;
    case "leaf":
      leafMove(guide, rise, out);
      return;
    case "links":
      linksMove(guide, -rise, lowerLonger, upperLonger, out);
      return;
    case undefined:
      return;
  }
}

/** Nose-up turn of the pinion: a rear axle's pinion points forward, a front axle's rearward. */
export const noseUp = (runs: Runs, turn: number): number => chainSign(runs) * turn;

/** Travel at which the guides' error is worked out, metres. */
const PROBE = 0.01;
/** Half width of the error of a stated rate, as a share of it: assumed, no source. */
const RATE_SHARE = 0.1;

/** Standard uncertainty of the guides' turn for each metre of travel, rad/m, from a half width `tape` in metres on every coordinate; linear law. */
export function guideRateUncertainty(guide: AxleGuide | null, runs: Runs, tape: number): number {
  if (!guide) return 0;
  if (guide.kind === "rate") return (RATE_SHARE * Math.abs(guide.pitchPerMetre)) / Math.sqrt(3);
  const turnOf = (changed: AxleGuide): number => {
    const out = newGuidePlace();
    guideMove(changed, runs, PROBE, 0, 0, out);
    return out.reached ? out.turn : 0;
  };
  const at = turnOf(guide);
  const squares = nudged(guide, tape).reduce((sum, changed) => sum + (turnOf(changed) - at) ** 2, 0);
  return Math.sqrt(squares / 3) / PROBE;
}

/** The guides with one coordinate at a time moved by `by`. */
function nudged(guide: Exclude<AxleGuide, { kind: "rate" }>, by: number): readonly AxleGuide[] {
  if (guide.kind === "leaf") {
    const fixed: AxleGuide = { ...guide, fixedEyeForward: (guide.fixedEyeForward + by) as typeof guide.fixedEyeForward };
    const shackle = guide.shackleEyeForward;
    return shackle === null ? [fixed] : [fixed, { ...guide, shackleEyeForward: (shackle + by) as typeof shackle }];
  }
  return (["lower", "upper"] as const).flatMap((name) =>
    (["frameForward", "frameUp", "axleForward", "axleUp"] as const).map((key) => ({
      ...guide,
      [name]: { ...guide[name], [key]: guide[name][key] + by },
    })),
  );
}
