import type { JointResult } from "@halfturn/engine/analysis";
import { type Joint, shaftIds } from "@halfturn/engine/kinematics";
import { limitSourceText } from "@halfturn/words";
import type { Block, Cell } from "./blocks.js";
import { degreesInterval, degreesText, toneOf } from "./estimates.js";
import type { Subject } from "./subject.js";
import { whyShaftsUnknown } from "./why-not.js";

/** Bisection in the engine leaves a limit set by its kind exact; a limit below it comes from the acceleration. */
const SAME_ANGLE_RAD = 1e-12;

function maximumSource({ input, words, catalogue }: Subject, joint: Joint, maximum: number): string {
  const { limits } = input;
  const said = (source: string): string => limitSourceText(catalogue, source);
  const byKind = joint.statedAngle ?? limits.jointAngle[joint.kind].value;
  if (joint.kind === "cross" && maximum < byKind - SAME_ANGLE_RAD) return said(limits.jointAcceleration.source);
  return joint.statedAngle === undefined ? said(limits.jointAngle[joint.kind].source) : words.limitStated;
}

/** The two shafts that a joint stands between, in power order. */
const shaftsAt = ({ input }: Subject, joint: number): readonly string[] => shaftIds(input.driveline).slice(joint, joint + 2);

function jointRow(subject: Subject, joint: JointResult, index: number): readonly Cell[] {
  const { numbers, catalogue, words, nameOf, input } = subject;
  const { labels } = catalogue;
  const kind = input.driveline.joints[index]?.kind;
  const angle = joint.operatingAngle;
  return [
    { text: kind ? `${nameOf(joint.id)}, ${labels.jointKinds[kind]}` : nameOf(joint.id) },
    { text: angle ? degreesText(angle.value, numbers) : whyShaftsUnknown(subject, shaftsAt(subject, index)) },
    { text: angle ? degreesInterval(angle, numbers) : "–" },
    { text: words.tables.allowed(degreesText(joint.minimum, numbers), degreesText(joint.maximum, numbers)) },
    { text: labels.verdicts[joint.verdict], tone: toneOf(joint.verdict) },
  ];
}

function sourceNotes(subject: Subject): readonly string[] {
  const { analysis, input, nameOf, words, numbers } = subject;
  const bySource = new Map<string, string[]>();
  analysis.joints.forEach((result, k) => {
    const joint = input.driveline.joints[k];
    if (!joint) return;
    const source = maximumSource(subject, joint, result.maximum);
    bySource.set(source, [...(bySource.get(source) ?? []), nameOf(result.id)]);
  });
  return [...bySource].map(([source, joints]) => words.limitOf(numbers.all(joints), source));
}

/** Operating angle of every joint against its limits, and where the limits come from. */
export function jointsBlocks(subject: Subject): readonly Block[] {
  const { labels, explanations } = subject.catalogue;
  return [
    {
      kind: "table",
      caption: subject.words.tables.joints,
      columns: [
        { label: labels.joint, align: "start", weight: 2.4 },
        { label: labels.operatingAngle, align: "end", weight: 1.6 },
        { label: labels.interval95, align: "end", weight: 2 },
        { label: labels.limits, align: "end", weight: 2 },
        { label: labels.verdict, align: "start", weight: 2 },
      ],
      rows: subject.analysis.joints.map((joint, k) => jointRow(subject, joint, k)),
      notes: [explanations.intervalsMean, ...sourceNotes(subject)],
    },
  ];
}

/** Inclination and heading of every shaft. */
export function shaftsBlocks(subject: Subject): readonly Block[] {
  const { numbers, catalogue, words, analysis, nameOf, driveline } = subject;
  const { labels } = catalogue;
  return [
    {
      kind: "table",
      caption: words.tables.shafts,
      columns: [
        { label: labels.shaft, align: "start", weight: 2.4 },
        { label: labels.inclination, align: "end", weight: 1.5 },
        { label: labels.interval95, align: "end", weight: 2 },
        { label: labels.heading, align: "end", weight: 1.5 },
        { label: labels.interval95, align: "end", weight: 2 },
      ],
      rows: analysis.shafts.map((shaft) => [
        { text: nameOf(shaft.id) },
        { text: shaft.inclination ? degreesText(shaft.inclination.value, numbers) : whyShaftsUnknown(subject, [shaft.id]) },
        { text: shaft.inclination ? degreesInterval(shaft.inclination, numbers) : "–" },
        { text: shaft.heading ? degreesText(shaft.heading.value, numbers) : words.whyNot.generic },
        { text: shaft.heading ? degreesInterval(shaft.heading, numbers) : "–" },
      ]),
      // Chain +Y is the vehicle's left for a driveline that runs forward, its right for one that runs rearward.
      notes: [words.tables.inclinationSign, words.tables.headingSign(driveline.runs === "forward" ? "left" : "right")],
    },
  ];
}
