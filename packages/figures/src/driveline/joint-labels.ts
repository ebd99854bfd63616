import type { Joint } from "@halfturn/engine/kinematics";
import { angleText } from "../estimate-text.js";
import type { Sheet } from "../figure-options.js";
import type { LabelLine } from "../layout/label-blocks.js";
import type { DrivelinePicture } from "./driveline-picture.js";
import { verdictMark } from "./verdict-mark.js";

/** What is written at a joint: its operating angle, and the verdict as a word beside its mark. */
export function jointLines({ analysis }: DrivelinePicture, joint: Joint, { labels, theme }: Sheet): readonly LabelLine[] {
  const result = analysis?.joints.find(({ id }) => id === joint.id);
  const verdict = analysis?.withheld ? "withheld" : (result?.verdict ?? "not-gauged");
  return [
    { content: angleText(result?.operatingAngle, labels, true), bold: true },
    { content: labels.verdicts[verdict], mark: verdictMark(verdict, theme) },
  ];
}

/** "J1, cross joint: 3.10° ± 0.20°, within". */
export function jointSentence(picture: DrivelinePicture, joint: Joint, sheet: Sheet): string {
  const said = jointLines(picture, joint, sheet).map(({ content }) => content);
  return `${sheet.labels.item(`${joint.id}, ${sheet.labels.jointKinds[joint.kind]}`, said.join(", "))}.`;
}
