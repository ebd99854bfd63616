import { type FigureOptions, type Sheet, sheetOf } from "../figure-options.js";
import { figureDocument } from "../svg/figure-document.js";
import type { DrivelinePicture } from "./driveline-picture.js";
import { jointSentence } from "./joint-labels.js";
import { jointPlaces } from "./places.js";
import { magnified, type Projection, project, twinFactor } from "./projection.js";
import { groundLine, SURROUNDINGS_HEIGHT, seenFromSide } from "./surroundings.js";
import { panelAspect, viewPanel } from "./view-panel.js";

/** One driveline as it stood, will stand or stands now. */
export interface ComparedPicture {
  /** "As found", "Predicted": what the panel is called. */
  readonly name: string;
  readonly picture: DrivelinePicture;
}

/** Panels stand under one another, so each is kept low. */
const TALLEST = 130;

/** The factor that suits all: of the drawn ones the gentlest. */
function commonFactor(projections: readonly Projection[], sheet: Sheet): number {
  const factors = projections.map((projection) => twinFactor(projection, panelAspect(sheet, TALLEST)));
  return Math.min(...factors);
}

/**
 * One driveline from the vehicle's side several times, one under the other: before, as predicted, as measured. Angles are drawn larger by one factor for all, so
 * that a turn of a shaft shows as the same turn in every panel; with the operating angles and verdicts. At least one picture, all of one driveline.
 */
export function comparisonView(compared: readonly ComparedPicture[], options: FigureOptions): string {
  const sheet = sheetOf(options);
  const { labels } = sheet;
  const projections = compared.map(({ picture }) => project(picture, "side"));
  const factor = commonFactor(projections, sheet);
  const scaleOf = ({ toScale }: Projection): string => (toScale ? labels.trueToScale : labels.notToScale);
  const drawn = factor === 1 ? scaleOf(projections[0] as Projection) : labels.anglesLarger(factor);
  let bottom = -8;
  const panels = compared.map(({ name, picture }, k) => {
    const last = k === compared.length - 1;
    const panel = viewPanel(
      {
        picture,
        projection: magnified(projections[k] as Projection, factor),
        heading: name,
        remark: k === 0 ? drawn : "",
        places: jointPlaces(picture, sheet),
        at: "joints",
        nameBearings: false,
        arcs: true,
        tallest: TALLEST,
        ...(last ? { surroundings: { height: SURROUNDINGS_HEIGHT, draw: (y: number) => groundLine(y, picture.runs, sheet) } } : {}),
        top: bottom + 22,
      },
      sheet,
    );
    bottom = panel.bottom;
    return panel.svg;
  });
  return figureDocument(sheet, {
    title: labels.comparisonView,
    description: [`${labels.seenFrom[seenFromSide((compared[0] as ComparedPicture).picture.runs)]}. ${drawn}.`, ...compared.map(sentence)],
    height: bottom + 12,
    body: panels,
  });

  function sentence({ name, picture }: ComparedPicture): string {
    const joints = picture.driveline.joints.map((joint) => jointSentence(picture, joint, sheet)).join(" ");
    return labels.item(name, joints);
  }
}
