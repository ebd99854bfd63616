import { type DrivelineJson, drivelineToJson, type Quantity, toAnalysisInput } from "@halfturn/casefile";
import { analyseDriveline } from "@halfturn/engine/analysis";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { uniformDeviates } from "@halfturn/engine/uncertainty";
import { radians, radiansToDegrees, rpm, rpmToRadiansPerSecond } from "@halfturn/engine/units";
import { SHAFT_RPM } from "./case-of.js";
import { type Kind, vehiclesOf } from "./simulated-vehicles.js";
import { poseInResults, shaftsOf, type TrueDriveline, trueMotion } from "./true-driveline.js";

/** One printed quantity over many gaugings: how often its 95 % interval held the truth, and how far from zero it lay. */
export interface Coverage {
  readonly kind: string;
  readonly headings: "measured" | "unmeasured";
  readonly quantity: string;
  readonly counted: number;
  readonly share: number;
  /** Median over the gaugings of truth over standard uncertainty; a quantity that may have either sign counts as far from zero. */
  readonly distance: number;
}

/**
 * Where the 95 % interval has to hold the truth in 95 cases of 100. Nearer to zero it starts at zero and ends at a one-sided bound, and holds it more often.
 * A quantity is put on one side of this by its median: picking single gaugings by where they came out would itself bias the count.
 */
export const FAR_FROM_ZERO = 3;

const degreesOf = (angle: number): number => radiansToDegrees(radians(angle));
const SQUARED = rpmToRadiansPerSecond(rpm(SHAFT_RPM)) ** 2;

interface Compared {
  readonly name: string;
  readonly quantity: Quantity;
  readonly truth: number;
  readonly signed: boolean;
}

/** Every quantity printed for one driveline beside its truth. */
function compared(truth: TrueDriveline, printed: DrivelineJson): readonly Compared[] {
  const motion = trueMotion(truth);
  const speed = printed.motion.speeds.at(-1);
  const bounded = (name: string, quantity: Quantity | undefined, value: number): Compared => ({
    name,
    quantity: quantity ?? null,
    truth: value,
    signed: false,
  });
  return [
    ...shaftsOf(truth).flatMap((shaft, s): readonly Compared[] => {
      const pose = poseInResults(truth.runs, truth.directions[s] as TrueDriveline["directions"][number]);
      const { inclinationDeg, headingDeg } = printed.shafts[s] as DrivelineJson["shafts"][number];
      return [
        { name: `inclination ${shaft}`, quantity: inclinationDeg, truth: degreesOf(pose.inclination), signed: true },
        { name: `heading ${shaft}`, quantity: headingDeg, truth: degreesOf(pose.heading), signed: true },
      ];
    }),
    ...motion.joints.map((angle, k) => bounded(`joint angle J${k + 1}`, printed.joints[k]?.operatingAngleDeg, degreesOf(angle))),
    bounded("equivalent angle", printed.cancellation.equivalentAngleDeg, degreesOf(motion.equivalent)),
    ...(motion.bench === null ? [] : [bounded("bench residual", printed.cancellation.benchResidualDeg, degreesOf(motion.bench))]),
    bounded("transmission error", printed.motion.transmissionErrorPeakToPeakDeg, degreesOf(motion.peakToPeak)),
    bounded("driven acceleration", speed?.drivenAccelerationRadS2, motion.acceleration * SQUARED),
    ...motion.drive.map((each, s) =>
      bounded(`acceleration ${truth.sections[s]}, drive`, speed?.drive[s]?.accelerationRadS2, each * SQUARED),
    ),
    ...motion.coast.map((each, s) =>
      bounded(`acceleration ${truth.sections[s]}, coast`, speed?.coast[s]?.accelerationRadS2, each * SQUARED),
    ),
  ];
}

interface Tally {
  readonly signed: boolean;
  counted: number;
  held: number;
  readonly distances: number[];
}

/** Gauges `gaugings` vehicles of a kind once each, with `draws` draws an analysis, and counts. A quantity that is not printed is not counted. */
export function countCoverage(
  kind: Kind,
  headingsMeasured: boolean,
  options: { readonly gaugings: number; readonly draws: number; readonly seeds: readonly number[] },
): readonly Coverage[] {
  const tallies = new Map<string, Tally>();
  for (const seed of options.seeds) {
    const next = vehiclesOf(kind, headingsMeasured, uniformDeviates(seed));
    for (let k = 0; k < options.gaugings; k++) {
      const { truth, document } = next();
      const settings = { defaults: DEFAULT_LIMITS, draws: options.draws, seed: seed + k };
      const analysis = analyseDriveline(toAnalysisInput(document, { driveline: 0, gauging: 0 }, settings));
      for (const each of compared(truth, drivelineToJson({ analysis, stage: "as-found", gauging: 0 }))) count(tallies, each);
    }
  }
  return [...tallies].map(([quantity, { counted, held, distances, signed }]) => ({
    kind: kind.name,
    headings: headingsMeasured ? "measured" : "unmeasured",
    quantity,
    counted,
    share: held / counted,
    distance: signed ? Number.POSITIVE_INFINITY : (distances.sort((a, b) => a - b)[Math.floor(distances.length / 2)] as number),
  }));
}

function count(tallies: Map<string, Tally>, { name, quantity, truth, signed }: Compared): void {
  if (!quantity) return;
  const tally = tallies.get(name) ?? { signed, counted: 0, held: 0, distances: [] };
  tallies.set(name, tally);
  const [low, high] = quantity.interval95;
  tally.counted += 1;
  if (low <= truth && truth <= high) tally.held += 1;
  tally.distances.push(truth / quantity.u);
}
