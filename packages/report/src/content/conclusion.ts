import type { Verdict } from "@halfturn/engine/analysis";
import type { Block, Notice } from "./blocks.js";
import { degreesInterval, degreesText } from "./estimates.js";
import { accelerationsAtHighestSpeed, highestSpeed, needsCaution } from "./motion-results.js";
import type { Subject } from "./subject.js";
import { repeatFirst } from "./sureness.js";

/** More than this is not read under a vehicle; the findings hold the rest. */
const MOST_STEPS = 6;

type Line = { readonly verdict: Verdict; readonly text: string };

function jointLines(subject: Subject): readonly Line[] {
  const { analysis, nameOf, numbers, words } = subject;
  const at = words.conclusion;
  const within = analysis.joints.filter((joint) => joint.verdict === "within").map((joint) => nameOf(joint.id));
  const lines = analysis.joints.flatMap((joint): Line[] => {
    const { operatingAngle: angle, verdict } = joint;
    const name = nameOf(joint.id);
    if (verdict === "within") return [];
    if (angle === null || verdict === "not-gauged") return [{ verdict: "not-gauged", text: at.jointNotGauged(name) }];
    const value = degreesText(angle.value, numbers);
    const minimum = degreesText(joint.minimum, numbers);
    const maximum = degreesText(joint.maximum, numbers);
    if (verdict === "over") return [{ verdict, text: at.jointOver(name, value, maximum) }];
    if (verdict === "under") return [{ verdict, text: at.jointUnder(name, value, minimum) }];
    return verdict === "uncertain" ? [{ verdict, text: at.jointUncertain(name, degreesInterval(angle, numbers), minimum, maximum) }] : [];
  });
  return within.length === 0 ? lines : [...lines, { verdict: "within", text: at.jointsWithin(numbers.all(within)) }];
}

function equivalentLines({ analysis, numbers, words }: Subject): readonly Line[] {
  const { equivalentAngle: angle, equivalentMaximum, verdict } = analysis.cancellation;
  const at = words.conclusion;
  if (angle === null) return [];
  const value = degreesText(angle.value, numbers);
  const limit = degreesText(equivalentMaximum, numbers);
  if (verdict === "over") return [{ verdict, text: at.equivalentOver(value, limit) }];
  if (verdict === "uncertain") return [{ verdict, text: at.equivalentUncertain(degreesInterval(angle, numbers), limit) }];
  return verdict === "within" ? [{ verdict, text: at.equivalentWithin(value, limit) }] : [];
}

function motionLines(subject: Subject): readonly Line[] {
  const { numbers, words } = subject;
  const at = words.conclusion;
  const speed = highestSpeed(subject);
  if (!speed) return [];
  const speedText = numbers.speed(speed.shaftSpeed);
  const judged = accelerationsAtHighestSpeed(subject).filter(({ verdict }) => verdict !== null);
  const lines = judged.flatMap((result): Line[] => {
    const { quantity, estimate, limit, caution, verdict } = result;
    if (estimate === null || limit === null) return [];
    const limitText = numbers.acceleration(limit);
    const interval = numbers.accelerationInterval(estimate.low, estimate.high);
    if (verdict === "over") return [{ verdict, text: at.motion(quantity, numbers.acceleration(estimate.value), limitText, speedText) }];
    if (verdict === "uncertain") return [{ verdict, text: at.motionUncertain(quantity, interval, limitText, speedText) }];
    return caution !== null && needsCaution(result)
      ? [{ verdict: "within", text: at.motionCaution(quantity, interval, numbers.acceleration(caution), speedText) }]
      : [];
  });
  if (lines.some(({ verdict }) => verdict !== "within")) return lines;
  return judged.every(({ verdict }) => verdict === "within") ? [...lines, { verdict: "within", text: at.motionWithin(speedText) }] : lines;
}

const ORDER: readonly Verdict[] = ["over", "under", "uncertain", "not-gauged", "within", "withheld"];

function verdictNotice(subject: Subject): Notice {
  const { words, analysis, catalogue, title } = subject;
  const at = words.conclusion;
  const nothing = subject.findings.find(({ finding }) => finding.code === "gauging.nothing-read");
  if (nothing) return { kind: "notice", tone: "none", title: `${title}: ${at.notGauged}`, lines: [nothing.entry.says] };
  if (analysis.withheld)
    return { kind: "notice", tone: "stop", title: `${title}: ${at.withheld}`, lines: [catalogue.explanations.notRoadAngles] };
  const lines = [...jointLines(subject), ...equivalentLines(subject), ...motionLines(subject)].sort(
    (a, b) => ORDER.indexOf(a.verdict) - ORDER.indexOf(b.verdict),
  );
  const verdicts: readonly Verdict[] = [...lines.map(({ verdict }) => verdict), analysis.cancellation.verdict, analysis.motion.verdict];
  const some = (...wanted: readonly Verdict[]): boolean => verdicts.some((verdict) => wanted.includes(verdict));
  const texts = lines.map(({ text }) => text);
  if (some("over", "under")) return { kind: "notice", tone: some("over") ? "over" : "under", title: `${title}: ${at.over}`, lines: texts };
  if (some("uncertain")) return { kind: "notice", tone: "unsure", title: `${title}: ${at.uncertain}`, lines: texts };
  if (some("not-gauged", "withheld")) return { kind: "notice", tone: "none", title: `${title}: ${at.notGauged}`, lines: texts };
  return { kind: "notice", tone: "good", title: `${title}: ${at.within}`, lines: texts };
}

function nextSteps(subject: Subject): readonly string[] {
  const { analysis, findings, words } = subject;
  const asked = findings.filter(
    ({ finding: { severity, code } }) => (severity !== "note" && code !== "decision.stop-accepted") || code.endsWith(".uncertain"),
  );
  const unsure = [...analysis.joints.map(({ verdict }) => verdict), analysis.cancellation.verdict, analysis.motion.verdict].includes(
    "uncertain",
  );
  const unanswered = unsure && !asked.some(({ finding }) => finding.code.endsWith(".uncertain"));
  const steps = [...new Set([...asked.map(({ entry }) => entry.doNext), ...(unanswered ? [repeatFirst(subject)] : [])])].slice(
    0,
    MOST_STEPS,
  );
  return steps.length > 0 ? steps : [words.conclusion.nothingToDo];
}

/** The answer first: what is over, what is uncertain, what to do next. */
export const conclusionBlocks = (subject: Subject): readonly Block[] => [
  verdictNotice(subject),
  { kind: "list", title: subject.words.conclusion.doNext, ordered: true, items: nextSteps(subject) },
];
