import { type DrivelineAnalysis, type Estimate, estimateVerdict, type Verdict } from "@halfturn/engine/analysis";
import { degreesToRadians } from "@halfturn/engine/units";
import type { Cell } from "./blocks.js";
import type { CorrectedDriveline, CorrectionSubject, ForetoldDriveline } from "./correction-subject.js";
import { degreesInterval, degreesText, toneOf } from "./estimates.js";

type Quantity = ForetoldDriveline["equivalentAngleDeg"];

/** One quantity that can be told before, foretold and measured. SI; millimetres for the slip, which only a tape sees. */
export interface ComparedQuantity {
  readonly label: string;
  readonly ofResult: (analysis: DrivelineAnalysis) => Estimate | null;
  /** undefined = an older record does not hold it. */
  readonly ofForetold: (foretold: ForetoldDriveline) => Estimate | null | undefined;
  readonly value: (value: number) => string;
  readonly interval: (estimate: Estimate) => string;
  /** null where no limit is set. */
  readonly limit: { readonly minimum?: number; readonly maximum?: number } | null;
}

const estimateOf = (quantity: Quantity, toSi: (value: number) => number): Estimate | null =>
  quantity && {
    value: toSi(quantity.value),
    u: toSi(quantity.u),
    low: toSi(quantity.interval95[0]),
    high: toSi(quantity.interval95[1]),
  };
const angleOf = (quantity: Quantity): Estimate | null => estimateOf(quantity, degreesToRadians);
const same = (value: number): number => value;

/** Everything that a record foretells of a driveline, in the order of the work: joints, what they leave, accelerations, slip. */
export function comparedQuantities(subject: CorrectionSubject, on: CorrectedDriveline): readonly ComparedQuantity[] {
  const { catalogue, numbers } = subject;
  const { labels } = catalogue;
  const judged = (on.before ?? on.after)?.analysis;
  const angle = {
    value: (value: number) => degreesText(value, numbers),
    interval: (estimate: Estimate) => degreesInterval(estimate, numbers),
  };
  const joints = on.driveline.joints.map(({ id }, k): ComparedQuantity => {
    const limit = judged?.joints[k];
    return {
      ...angle,
      label: `${labels.operatingAngle}, ${on.nameOf(id)}`,
      ofResult: (analysis) => analysis.joints.find((joint) => joint.id === id)?.operatingAngle ?? null,
      ofForetold: (foretold) => angleOf(foretold.joints.find((joint) => joint.id === id)?.operatingAngleDeg ?? null),
      limit: limit ? { minimum: limit.minimum, maximum: limit.maximum } : null,
    };
  });
  return [
    ...joints,
    {
      ...angle,
      label: labels.equivalentAngle,
      ofResult: ({ cancellation }) => cancellation.equivalentAngle,
      ofForetold: ({ equivalentAngleDeg }) => angleOf(equivalentAngleDeg),
      limit: judged ? { maximum: judged.cancellation.equivalentMaximum } : null,
    },
    ...accelerations(subject, on),
    ...(on.driveline.sections.length > 0 ? [slip(subject, on)] : []),
  ];
}

function accelerations({ catalogue, words, numbers }: CorrectionSubject, on: CorrectedDriveline): readonly ComparedQuantity[] {
  const limits = (on.before ?? on.after)?.input.limits;
  const format = {
    value: (value: number) => numbers.acceleration(value),
    interval: ({ low, high }: Estimate) => numbers.accelerationInterval(low, high),
  };
  const ofSections = (way: "drive" | "coast"): readonly ComparedQuantity[] =>
    on.driveline.sections.map(({ id }) => ({
      ...format,
      label: way === "drive" ? words.tables.driveOf(on.nameOf(id)) : words.tables.coastOf(on.nameOf(id)),
      ofResult: ({ motion }) => motion.speeds.at(-1)?.[way].find(({ section }) => section === id)?.acceleration ?? null,
      ofForetold: ({ highestSpeed }) =>
        highestSpeed && estimateOf(highestSpeed[way].find(({ section }) => section === id)?.accelerationRadS2 ?? null, same),
      limit: limits ? { maximum: (way === "drive" ? limits.inertiaDrive : limits.inertiaCoast).value } : null,
    }));
  return [
    {
      ...format,
      label: catalogue.labels.drivenAcceleration,
      ofResult: ({ motion }) => motion.speeds.at(-1)?.drivenAcceleration ?? null,
      ofForetold: ({ highestSpeed }) => highestSpeed && estimateOf(highestSpeed.drivenAccelerationRadS2, same),
      limit: limits ? { maximum: limits.drivenAccelerationOver.value } : null,
    },
    ...ofSections("drive"),
    ...ofSections("coast"),
  ];
}

function slip({ catalogue, numbers }: CorrectionSubject, { driveline }: CorrectedDriveline): ComparedQuantity {
  const given = driveline.sections.find((section) => section.slip !== undefined)?.slip;
  const { engagedMm, minimumEngagedMm, inwardTravelMm } = given ?? {};
  const known = engagedMm !== undefined && minimumEngagedMm !== undefined && inwardTravelMm !== undefined;
  return {
    label: catalogue.correction.slipTravel,
    ofResult: () => null,
    ofForetold: ({ slipTravelMm }) => estimateOf(slipTravelMm, same),
    value: (value) => numbers.evenLength(value),
    interval: ({ low, high }) => numbers.evenLengthInterval(low, high),
    limit: known ? { maximum: engagedMm - minimumEngagedMm, minimum: -inwardTravelMm } : null,
  };
}

/** Value, verdict against its limit, and the interval below. */
export function quantityCell(
  { catalogue, words }: CorrectionSubject,
  quantity: ComparedQuantity,
  estimate: Estimate | null | undefined,
  withheld = false,
): Cell {
  if (!estimate) return { text: estimate === undefined ? words.correct.notRecorded : catalogue.labels.notKnown };
  const value = quantity.value(estimate.value);
  const detail = quantity.interval(estimate);
  if (quantity.limit === null) return { text: value, detail };
  const verdict: Verdict = withheld ? "withheld" : estimateVerdict(estimate, quantity.limit);
  return { text: `${value}, ${catalogue.labels.verdicts[verdict]}`, detail, tone: toneOf(verdict) };
}
