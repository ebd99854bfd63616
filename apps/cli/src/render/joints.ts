import type { CaseJoint, JointJson } from "@halfturn/casefile";
import type { NameOf } from "@halfturn/words";
import { angleIntervalOf, angleOf } from "./quantity-text.js";
import { table } from "./table.js";
import { verdictText } from "./verdict-text.js";
import type { View } from "./view.js";

/** The angle each joint works at, beside its limits. */
export function jointLines(
  joints: readonly JointJson[],
  kinds: readonly CaseJoint["kind"][],
  nameOf: NameOf,
  view: View,
): readonly string[] {
  const { labels, numbers } = view.words;
  const header = [labels.joint, labels.angle, labels.interval95, labels.limit, labels.verdict].map((text) => view.paint("aside", text));
  const rows = joints.map((joint) => [
    nameOf(joint.id),
    angleOf(joint.operatingAngleDeg, numbers, labels.notKnown),
    angleIntervalOf(joint.operatingAngleDeg, numbers),
    numbers.angleInterval(joint.minimumDeg, joint.maximumDeg),
    verdictText(joint.verdict, view),
  ]);
  const odd = joints.flatMap(({ id }, k) => {
    const kind = kinds[k];
    return kind === undefined || kind === "cross" ? [] : [`${nameOf(id)}: ${labels.jointKinds[kind]}`];
  });
  return [
    view.paint("strong", labels.joints),
    ...table([header, ...rows], ["left", "right"]),
    ...odd.map((line) => `  ${view.paint("aside", line)}`),
  ];
}
