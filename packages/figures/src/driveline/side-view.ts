import { type FigureOptions, sheetOf } from "../figure-options.js";
import { figureDocument } from "../svg/figure-document.js";
import type { DrivelinePicture } from "./driveline-picture.js";
import { jointSentence } from "./joint-labels.js";
import { jointPlaces, shaftPlaces } from "./places.js";
import { magnified, project, twinFactor } from "./projection.js";
import { shaftSentence } from "./shaft-labels.js";
import { groundLine, SURROUNDINGS_HEIGHT, seenFromSide } from "./surroundings.js";
import { panelAspect, viewPanel } from "./view-panel.js";

/**
 * The driveline from the vehicle's side, power flowing from left to right: true to scale where the section lengths are known, with the inclinations; below it
 * the same with its angles drawn larger, with the operating angles and verdicts.
 */
export function sideView(picture: DrivelinePicture, options: FigureOptions): string {
  const sheet = sheetOf(options);
  const { labels } = sheet;
  const projection = project(picture, "side");
  const factor = twinFactor(projection, panelAspect(sheet));
  const scaleWords = projection.toScale ? labels.trueToScale : labels.notToScale;
  const upper = viewPanel(
    {
      picture,
      projection,
      heading: scaleWords,
      remark: labels.seenFrom[seenFromSide(picture.runs)],
      places: shaftPlaces(picture, "side", sheet),
      at: "shafts",
      nameBearings: true,
      arcs: false,
      surroundings: { height: SURROUNDINGS_HEIGHT, draw: (y) => groundLine(y, picture.runs, sheet) },
      top: 14,
    },
    sheet,
  );
  const twin = viewPanel(
    {
      picture,
      projection: magnified(projection, factor),
      heading: factor === 1 ? scaleWords : labels.anglesLarger(factor),
      remark: "",
      places: jointPlaces(picture, sheet),
      at: "joints",
      nameBearings: false,
      arcs: true,
      top: upper.bottom + 22,
    },
    sheet,
  );
  return figureDocument(sheet, {
    title: labels.sideView,
    description: [
      `${labels.seenFrom[seenFromSide(picture.runs)]}. ${scaleWords}.`,
      ...Array.from({ length: picture.driveline.joints.length + 1 }, (_, k) => shaftSentence(picture, k, "side", sheet)),
      ...picture.driveline.joints.map((joint) => jointSentence(picture, joint, sheet)),
    ],
    height: twin.bottom + 12,
    body: [upper.svg, twin.svg],
  });
}
