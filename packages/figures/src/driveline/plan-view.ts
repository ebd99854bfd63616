import { type FigureOptions, sheetOf } from "../figure-options.js";
import { figureDocument } from "../svg/figure-document.js";
import type { DrivelinePicture } from "./driveline-picture.js";
import { jointSentence } from "./joint-labels.js";
import { jointPlaces, shaftPlaces } from "./places.js";
import { magnified, project, twinFactor } from "./projection.js";
import { shaftSentence } from "./shaft-labels.js";
import { SURROUNDINGS_HEIGHT, whichSideIsUp } from "./surroundings.js";
import { panelAspect, viewPanel } from "./view-panel.js";

/**
 * The driveline from above, power flowing from left to right, with the headings; unmeasured ones dashed. Where anything is out of line a twin with larger
 * angles stands below it, with the operating angles.
 */
export function planView(picture: DrivelinePicture, options: FigureOptions): string {
  const sheet = sheetOf(options);
  const { labels } = sheet;
  const projection = project(picture, "plan");
  const factor = twinFactor(projection, panelAspect(sheet));
  const scaleWords = projection.toScale ? labels.trueToScale : labels.notToScale;
  const above = viewPanel(
    {
      picture,
      projection,
      heading: scaleWords,
      remark: labels.seenFromAbove,
      places: shaftPlaces(picture, "plan", sheet),
      at: "shafts",
      nameBearings: false,
      arcs: false,
      surroundings: { height: SURROUNDINGS_HEIGHT, draw: (y) => whichSideIsUp(y, picture.runs, sheet) },
      top: 14,
    },
    sheet,
  );
  const twin =
    factor === 1
      ? null
      : viewPanel(
          {
            picture,
            projection: magnified(projection, factor),
            heading: labels.anglesLarger(factor),
            remark: "",
            places: jointPlaces(picture, sheet),
            at: "joints",
            nameBearings: false,
            arcs: false,
            top: above.bottom + 22,
          },
          sheet,
        );
  return figureDocument(sheet, {
    title: labels.planView,
    description: [
      `${labels.seenFromAbove}. ${scaleWords}.`,
      ...Array.from({ length: picture.driveline.joints.length + 1 }, (_, k) => shaftSentence(picture, k, "plan", sheet)),
      ...picture.driveline.joints.map((joint) => jointSentence(picture, joint, sheet)),
    ],
    height: (twin?.bottom ?? above.bottom) + 12,
    body: [above.svg, twin?.svg ?? ""],
  });
}
