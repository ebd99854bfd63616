import type { Sheet } from "../figure-options.js";
import { caption } from "../layout/caption.js";
import { placeBlocks } from "../layout/label-blocks.js";
import { distance, type Point, point } from "../svg/point.js";
import { SMALL_TEXT } from "../svg/text.js";
import { wrapText } from "../svg/text-width.js";
import type { Theme } from "../theme.js";
import { angleArc } from "./angle-arc.js";
import { drawDriveline } from "./draw-driveline.js";
import type { DrivelinePicture } from "./driveline-picture.js";
import { arrange, type LabelledPlace, labelPlaces, placeList, roomFor } from "./labelled-places.js";
import { type PlacedShafts, placeShafts } from "./place-shafts.js";
import type { Projection } from "./projection.js";
import { AXLE_HALF, axleRadius } from "./shaft-parts.js";
import { straightAhead } from "./surroundings.js";

export interface PanelRequest {
  readonly picture: DrivelinePicture;
  readonly projection: Projection;
  readonly heading: string;
  readonly remark: string;
  readonly places: readonly LabelledPlace[];
  /** What the labels belong to. */
  readonly at: "shafts" | "joints";
  /** Support bearings named. */
  readonly nameBearings: boolean;
  readonly arcs: boolean;
  /** Drawn below the picture, above a list. */
  readonly surroundings?: { readonly height: number; readonly draw: (top: number) => string };
  /** Height that the joints may take at most. */
  readonly tallest?: number;
  readonly top: number;
}

export interface Panel {
  readonly svg: string;
  readonly bottom: number;
}

const CLEARANCE_SIDE = 30;
const CLEARANCE_PLAN = 36;
const TALLEST = 220;

/** Height over width that the joints of a panel may take before the driveline is drawn smaller, on the safe side. */
export const panelAspect = ({ left, right }: Sheet, tallest = TALLEST): number => tallest / (right - left - 60);

function shaftAnchors({ start, joints, end, projection }: PlacedShafts): { upper: Point[]; lower: Point[] } {
  const last = joints[joints.length - 1] as Point;
  const middles = [
    point(start.x + 8, start.y),
    ...joints.slice(1).map((to, k) => point(((joints[k] as Point).x + to.x) / 2, ((joints[k] as Point).y + to.y) / 2)),
    point(end.x, end.y),
  ];
  const halves = middles.map((_, k) =>
    k === 0 ? 16 : k === middles.length - 1 ? (projection.view === "plan" ? AXLE_HALF : axleRadius(distance(last, end))) + 2 : 8,
  );
  return {
    upper: middles.map(({ x, y }, k) => point(x, y - (halves[k] as number))),
    lower: middles.map(({ x, y }, k) => point(x, y + (halves[k] as number))),
  };
}

function angleArcs({ joints, end, top, bottom, projection: { slopes, known } }: PlacedShafts, theme: Theme): string {
  const places = [...joints, end];
  return joints
    .map((joint, k) => {
      if (!known[k] || !known[k + 1]) return "";
      const room = { along: distance(joint, places[k + 1] as Point), above: joint.y - top, below: bottom - joint.y };
      return angleArc(joint, slopes[k] as number, slopes[k + 1] as number, room, theme);
    })
    .join("");
}

/** One picture of the driveline with its labels; the next one begins at `bottom`. */
export function viewPanel(request: PanelRequest, sheet: Sheet): Panel {
  const { picture, projection, places, at, top } = request;
  const { theme, left, right, narrow, labels } = sheet;
  const head = caption(sheet, top, request.heading, request.remark);
  const arrangement = arrange(places, sheet, at === "joints");
  const room = roomFor(places, arrangement);
  const bandTop = top + head.height + 8;
  const placed = placeShafts(projection, {
    left: left + 4,
    right,
    top: bandTop + room.above,
    tallest: request.tallest ?? TALLEST,
    stub: narrow ? 40 : 62,
    driven: narrow ? 42 : 58,
    clearance: projection.view === "side" ? CLEARANCE_SIDE : CLEARANCE_PLAN,
    beyond: 20,
  });
  const drawn = drawDriveline(picture, placed, theme);
  const anchors =
    at === "shafts"
      ? shaftAnchors(placed)
      : {
          upper: placed.joints.map(({ x, y }, k) => point(x, y - 13 * (drawn.sizes[k] as number) - 2)),
          lower: placed.joints.map(({ x, y }, k) => point(x, y + 13 * (drawn.sizes[k] as number) + 2)),
        };
  let svg = head.svg;
  if (projection.view === "plan") svg += straightAhead((placed.joints[0] as Point).y, sheet);
  svg += drawn.svg;
  if (request.arcs) svg += angleArcs(placed, theme);

  let y = placed.bottom;
  const listTop = y + 8;
  svg += labelPlaces(places, arrangement, { top: bandTop, under: placed.bottom, ...anchors }, sheet);
  y += room.below;
  if (request.nameBearings && drawn.bearings.length > 0) {
    const each = (right - left) / drawn.bearings.length - 14;
    const lines = wrapText(labels.supportBearing, each, SMALL_TEXT).map((content) => ({ content, muted: true }));
    const blocks = drawn.bearings.map((bearing) => ({ anchor: point(bearing.x, bearing.y + 12), lines }));
    const named = placeBlocks(blocks, { left, right, top: y, drawing: "above" }, theme);
    svg += named?.svg ?? "";
    y += (named?.height ?? 0) + 6;
  }
  if (request.surroundings) {
    svg += request.surroundings.draw(y);
    y += request.surroundings.height;
  }
  if (arrangement === "list") {
    const list = placeList(places, Math.max(listTop, y + 8), sheet);
    svg += list.svg;
    y = Math.max(listTop, y + 8) + list.height;
  }
  return { svg, bottom: y };
}
