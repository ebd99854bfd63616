import { type PredictedDrivelineJson, type PredictedStateJson, type Quantity, toLimits } from "@halfturn/casefile";
import type { Verdict } from "@halfturn/engine/analysis";
import { DEFAULT_LIMITS, type Limit } from "@halfturn/engine/limits";
import { verdictOf } from "@halfturn/engine/uncertainty";
import type { CorrectionView } from "./correction-view.js";
import { angleIntervalOf, angleOf } from "./quantity-text.js";
import { slipLine } from "./slip-line.js";
import { table } from "./table.js";
import { benchVerdictText, verdictText } from "./verdict-text.js";
import { wrap } from "./wrap.js";

/** Every state after the changes beside the same state as it stands, driveline by driveline. A driveline that nothing moves is said in a line. */
export const beforeAfterLines = (
  before: readonly PredictedStateJson[],
  after: readonly PredictedStateJson[],
  view: CorrectionView,
): readonly string[] => [
  ...after.flatMap(({ id, drivelines }, s) => [
    "",
    view.paint("strong", `${view.words.correction.state}: ${view.names.state(id)}`),
    ...drivelines.flatMap((driveline, d) => {
      const stood = before[s]?.drivelines[d];
      return stood ? drivelineLines(stood, driveline, view) : [];
    }),
  ]),
  ...(after.some(({ drivelines }) => drivelines.some(({ geometry }) => geometry === "angles-only"))
    ? ["", ...wrap(view.words.correction.anglesOnly, view.width, "  ")]
    : []),
];

function drivelineLines(before: PredictedDrivelineJson, after: PredictedDrivelineJson, view: CorrectionView): readonly string[] {
  const name = view.names.driveline(after.id);
  if (JSON.stringify(before) === JSON.stringify(after)) return wrap(view.words.correction.unchanged(name), view.width, "  ");
  return [`  ${name}`, ...angleLines(before, after, view), ...accelerationLines(before, after, view), slipLine(before, after, view)];
}

const heads = (first: string, { words: { labels }, paint }: CorrectionView): readonly string[] =>
  [first, labels.before, labels.after, labels.interval95, labels.verdict].map((text) => paint("aside", text));

const ALIGNS = ["left", "right", "right"] as const;
const INDENT = 4;

function angleLines(before: PredictedDrivelineJson, after: PredictedDrivelineJson, view: CorrectionView): readonly string[] {
  const { labels, numbers } = view.words;
  const row = (name: string, was: Quantity, is: Quantity, verdict: string): readonly string[] => [
    name,
    angleOf(was, numbers, labels.notKnown),
    angleOf(is, numbers, labels.notKnown),
    angleIntervalOf(is, numbers),
    verdict,
  ];
  const rows = after.joints.map(({ id, operatingAngleDeg, verdict }, k) =>
    row(view.names.part(id, after.id), before.joints[k]?.operatingAngleDeg ?? null, operatingAngleDeg, verdictText(verdict, view)),
  );
  const was = before.cancellation;
  const is = after.cancellation;
  rows.push(row(labels.equivalentAngle, was.equivalentAngleDeg, is.equivalentAngleDeg, verdictText(is.verdict, view)));
  if (was.benchResidualDeg || is.benchResidualDeg) {
    rows.push(row(labels.benchResidual, was.benchResidualDeg, is.benchResidualDeg, benchVerdictText(is.benchVerdict, view)));
  }
  return table([heads(labels.angle, view), ...rows], ALIGNS, INDENT);
}

function accelerationLines(before: PredictedDrivelineJson, after: PredictedDrivelineJson, view: CorrectionView): readonly string[] {
  const { labels, numbers, terminal } = view.words;
  const was = before.motion.speeds.at(-1);
  const is = after.motion.speeds.at(-1);
  if (!was || !is) return [];
  const limits = toLimits(view.document, DEFAULT_LIMITS);
  const value = (quantity: Quantity): string => (quantity ? numbers.bareAcceleration(quantity.value) : labels.notKnown);
  const row = (name: string, from: Quantity, to: Quantity, limit: Limit<number>): readonly string[] => [
    name,
    value(from),
    value(to),
    to ? numbers.bareAccelerationInterval(...to.interval95) : "",
    to ? verdictText(against(to, limit), view) : "",
  ];
  const ofSections = (key: "drive" | "coast", limit: Limit<number>) =>
    is[key].map(({ section, accelerationRadS2 }, k) =>
      row(`${view.names.part(section, after.id)}, ${labels[key]}`, was[key][k]?.accelerationRadS2 ?? null, accelerationRadS2, limit),
    );
  const rows = [
    row(labels.drivenAcceleration, was.drivenAccelerationRadS2, is.drivenAccelerationRadS2, limits.drivenAccelerationOver),
    ...ofSections("drive", limits.inertiaDrive),
    ...ofSections("coast", limits.inertiaCoast),
  ];
  const first = `${labels.acceleration}, rad/s², ${terminal.analysed.atSpeed(numbers.speed(is.shaftRpm))}`;
  return [`${" ".repeat(INDENT)}${view.paint("aside", first)}`, ...table(rows, ALIGNS, INDENT)];
}

const against = ({ interval95: [low, high] }: NonNullable<Quantity>, { value }: Limit<number>): Verdict =>
  verdictOf({ low, high }, { maximum: value });
