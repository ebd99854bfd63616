import { contributions } from "@halfturn/engine/kinematics";
import { type DrivelinePicture, knownPoses } from "../driveline/driveline-picture.js";
import { angleText, degrees, usable } from "../estimate-text.js";
import { type FigureOptions, sheetOf } from "../figure-options.js";
import { caption, paragraph } from "../layout/caption.js";
import { keyList } from "../layout/key-list.js";
import { figureDocument } from "../svg/figure-document.js";
import { point } from "../svg/point.js";
import { arrowHead, line } from "../svg/shapes.js";
import { arrowPath } from "./arrow-path.js";
import { arrowColour, drawArrows } from "./draw-arrows.js";

/**
 * Each joint's contribution to the unevenness as an arrow, head to tail, and the arrow that is left. Its length is about the joint's angle squared, its
 * direction twice the phase at which the joint works. The exact equivalent angle of the analysis is written beside it.
 */
export function cancellationView(picture: DrivelinePicture, options: FigureOptions): string {
  const sheet = sheetOf(options);
  const { labels, theme, left, right } = sheet;
  const { driveline, analysis } = picture;
  const exact = labels.item(labels.exactEquivalentAngle, angleText(analysis?.cancellation.equivalentAngle, labels));
  const head = caption(sheet, 14, labels.cancellationView);
  const top = 14 + head.height + 8;
  const poses = knownPoses(picture);
  const parts = poses ? contributions(driveline, poses) : null;
  const path = parts ? arrowPath(parts.joints) : null;
  if (!parts || !path) {
    const why = parts ? labels.nothingToCancel : labels.notKnown;
    const said = paragraph({ left, right, fill: theme.muted }, top, why);
    return figureDocument(sheet, {
      title: labels.cancellationView,
      description: [why],
      height: top + said.height + 14,
      body: [head.svg, said.svg],
    });
  }

  const fromSum = labels.item(labels.whatIsLeft, labels.numbers.angle(degrees(parts.fromSum)));
  const names = driveline.joints.map(({ id }) => id);
  const drawn = drawArrows(path, names, labels.whatIsLeft, top + 4, sheet);
  const angles = driveline.joints.map(({ id }) => {
    const estimate = analysis?.joints.find((joint) => joint.id === id)?.operatingAngle;
    return usable(estimate) ? labels.numbers.angle(degrees(estimate.value)) : labels.notKnown;
  });
  const drawnJoints = new Set(path.arrows.map(({ joint }) => joint));
  const said = names.map((id, k) => {
    const words = labels.contributionOf(id, angles[k] as string);
    return drawnJoints.has(k) ? words : `${words}, ${labels.noContribution}`;
  });
  const sign = (colour: string, width: number) => (centre: { x: number; y: number }) =>
    line(point(centre.x - 9, centre.y), point(centre.x + 5, centre.y), { stroke: colour, "stroke-width": width }) +
    arrowHead(point(centre.x - 9, centre.y), point(centre.x + 10, centre.y), 9, colour);
  const list = keyList(
    [
      ...said.map((name, k) => ({ sign: drawnJoints.has(k) ? sign(arrowColour(k, sheet), 3) : () => "", name, lines: [] })),
      { sign: sign(theme.ink, 4), name: fromSum, lines: [{ content: exact }] },
    ],
    left,
    right,
    drawn.bottom + 14,
    theme,
  );
  const note = paragraph({ left, right, fill: theme.muted }, drawn.bottom + 14 + list.height + 2, labels.arrowsAreNearly);
  return figureDocument(sheet, {
    title: labels.cancellationView,
    description: [`${said.join("; ")}.`, `${fromSum}.`, `${exact}.`, labels.arrowsAreNearly],
    height: drawn.bottom + 14 + list.height + 2 + note.height + 12,
    body: [head.svg, drawn.svg, list.svg, note.svg],
  });
}
