import type { DrivelineAnalysis, JointResult, Verdict } from "@halfturn/engine/analysis";
import { type Radians, radiansToDegrees } from "@halfturn/engine/units";
import type { Numbers } from "@halfturn/words";
import type { HeadlineWords } from "./headline-words.js";

/** The one thing to know of a driveline, and how grave it is. */
export interface Headline {
  readonly verdict: Verdict;
  readonly text: string;
}

export interface HeadlineReader {
  readonly words: HeadlineWords;
  readonly numbers: Numbers;
  readonly jointName: (id: string) => string;
}

const GRAVEST = ["over", "under", "uncertain"] as const satisfies readonly Verdict[];

/** How far outside its limits a joint runs, as a share of the limit; negative inside. */
function excess({ operatingAngle, maximum, minimum }: JointResult): number {
  if (!operatingAngle) return Number.NEGATIVE_INFINITY;
  return Math.max(operatingAngle.value / maximum - 1, minimum > 0 ? 1 - operatingAngle.value / minimum : Number.NEGATIVE_INFINITY);
}

type Gravest = (typeof GRAVEST)[number];

const degrees = (angle: number, { numbers }: HeadlineReader): string => numbers.angle(radiansToDegrees(angle as Radians));

function jointText({ joints }: DrivelineAnalysis, verdict: Gravest, reader: HeadlineReader): string | null {
  const [joint] = joints.filter((one) => one.verdict === verdict).sort((a, b) => excess(b) - excess(a));
  if (!joint?.operatingAngle) return null;
  const { words, jointName } = reader;
  const { value } = joint.operatingAngle;
  const say = (limit: number) => [jointName(joint.id), degrees(value, reader), degrees(limit, reader)] as const;
  if (verdict === "over") return words.jointOver(...say(joint.maximum));
  if (verdict === "under") return words.jointUnder(...say(joint.minimum));
  return words.jointUncertain(...say(Math.abs(value - joint.maximum) < Math.abs(value - joint.minimum) ? joint.maximum : joint.minimum));
}

function leftText({ cancellation }: DrivelineAnalysis, verdict: Gravest, reader: HeadlineReader): string | null {
  if (!cancellation.equivalentAngle || cancellation.verdict !== verdict) return null;
  const said = [degrees(cancellation.equivalentAngle.value, reader), degrees(cancellation.equivalentMaximum, reader)] as const;
  return verdict === "over" ? reader.words.leftOver(...said) : reader.words.leftUncertain(...said);
}

function motionText({ motion }: DrivelineAnalysis, verdict: Gravest, { words, numbers }: HeadlineReader): string | null {
  const fastest = motion.speeds.at(-1);
  if (!fastest || motion.verdict !== verdict) return null;
  const speed = numbers.speed(fastest.shaftSpeed);
  return verdict === "over" ? words.motionOver(speed) : words.motionUncertain(speed);
}

/** One plain sentence: what is worst first, a joint before what all joints leave together before the motion. */
export function headlineOf(analysis: DrivelineAnalysis, reader: HeadlineReader): Headline {
  const { words, numbers, jointName } = reader;
  const { joints, cancellation, withheld } = analysis;
  if (withheld) return { verdict: "withheld", text: words.withheld };
  if (joints.every(({ operatingAngle }) => operatingAngle === null)) return { verdict: "not-gauged", text: words.nothingGauged };
  for (const verdict of GRAVEST) {
    const text = jointText(analysis, verdict, reader) ?? leftText(analysis, verdict, reader) ?? motionText(analysis, verdict, reader);
    if (text !== null) return { verdict, text };
  }
  const missing = joints.filter(({ operatingAngle }) => operatingAngle === null).map(({ id }) => jointName(id));
  if (missing.length > 0) return { verdict: "not-gauged", text: words.jointsNotGauged(numbers.all(missing)) };
  return cancellation.equivalentAngle
    ? { verdict: "within", text: words.allWithin(degrees(cancellation.equivalentAngle.value, reader)) }
    : { verdict: "not-gauged", text: words.phasingNotKnown };
}
