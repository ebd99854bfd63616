import type { Sheet } from "../figure-options.js";
import { BADGE_BAND, badge, keyList } from "../layout/key-list.js";
import { bandHeight, fitsBand, type LabelLine, placeBlocks } from "../layout/label-blocks.js";
import { spread } from "../layout/spread.js";
import { type Point, point } from "../svg/point.js";
import { line } from "../svg/shapes.js";
import { TEXT_SIZE } from "../svg/text.js";
import { fitText, wrapText } from "../svg/text-width.js";

/** A place of the drawing that has something to say. */
export interface LabelledPlace {
  readonly sign: string;
  readonly name: string;
  readonly lines: readonly LabelLine[];
}

/** How the labels stand: all above the drawing, every other one below it, or numbered with a list underneath. */
export type Arrangement = "above" | "both-sides" | "list";

const NAME_ROOM = 132;
const NAME_LINES = 2;
const GAP = 10;
/** A long name takes two lines; what is still left of it is cut here and stands in full in the description. */
function nameLines(name: string): readonly LabelLine[] {
  const lines = wrapText(name, NAME_ROOM, TEXT_SIZE, true);
  const rest = lines.slice(NAME_LINES - 1).join(" ");
  const shown = lines.length > NAME_LINES ? [...lines.slice(0, NAME_LINES - 1), fitText(rest, NAME_ROOM, TEXT_SIZE, true)] : lines;
  return shown.map((content) => ({ content, bold: true }));
}
const blockLines = ({ name, lines }: LabelledPlace): readonly LabelLine[] => [...nameLines(name), ...lines];
const NOWHERE = point(0, 0);

/** The first arrangement that fits the width. `bothSides`: there is free room below the drawing. */
export function arrange(places: readonly LabelledPlace[], { left, right }: Sheet, bothSides: boolean): Arrangement {
  const blocks = places.map((place) => ({ anchor: NOWHERE, lines: blockLines(place) }));
  if (fitsBand(blocks, left, right)) return "above";
  const halves = [0, 1].map((side) => blocks.filter((_, k) => k % 2 === side));
  return bothSides && halves.every((half) => fitsBand(half, left, right)) ? "both-sides" : "list";
}

export interface Room {
  readonly above: number;
  readonly below: number;
}

/** How much room the labels take above and below the drawing. */
export function roomFor(places: readonly LabelledPlace[], arrangement: Arrangement): Room {
  const rows = (side: 0 | 1) =>
    bandHeight(
      places.filter((_, k) => arrangement === "above" || k % 2 === side).map((place) => ({ anchor: NOWHERE, lines: blockLines(place) })),
    );
  if (arrangement === "list") return { above: BADGE_BAND + GAP, below: 0 };
  return { above: rows(0) + GAP, below: arrangement === "both-sides" ? rows(1) + GAP : 0 };
}

interface Drawing {
  /** Upper edge of the room above the drawing, and of the room below it. */
  readonly top: number;
  readonly under: number;
  /** Where leaders end: just above and just below what is drawn at the place. */
  readonly upper: readonly Point[];
  readonly lower: readonly Point[];
}

/** Draws the labels; a list, if there is one, begins at `listTop`. */
export function labelPlaces(
  places: readonly LabelledPlace[],
  arrangement: Arrangement,
  { top, under, upper, lower }: Drawing,
  sheet: Sheet,
): string {
  const { left, right, theme } = sheet;
  if (arrangement === "list") {
    const middles =
      spread(
        upper.map(({ x }) => ({ wanted: x, size: 20 })),
        left,
        right,
        3,
      ) ?? upper.map(({ x }) => x);
    return places
      .map(({ sign }, k) => {
        const centre = point(middles[k] as number, top + BADGE_BAND / 2);
        const leader = line(point(centre.x, centre.y + 10), upper[k] as Point, {
          stroke: theme.muted,
          "stroke-width": 1,
          "stroke-opacity": 0.7,
        });
        return leader + badge(sign, theme)(centre);
      })
      .join("");
  }
  const blocks = places.map((place, k) => ({ anchor: upper[k] as Point, lines: blockLines(place) }));
  const above = arrangement === "above" ? blocks : blocks.filter((_, k) => k % 2 === 0);
  const below =
    arrangement === "above" ? [] : blocks.map((block, k) => ({ ...block, anchor: lower[k] as Point })).filter((_, k) => k % 2 === 1);
  return (
    (placeBlocks(above, { left, right, top, drawing: "below" }, theme)?.svg ?? "") +
    (placeBlocks(below, { left, right, top: under + GAP, drawing: "above" }, theme)?.svg ?? "")
  );
}

/** The list of an arrangement that needs one. */
export const placeList = (places: readonly LabelledPlace[], top: number, { left, right, theme }: Sheet) =>
  keyList(
    places.map(({ sign, name, lines }) => ({ sign: badge(sign, theme), name, lines })),
    left,
    right,
    top,
    theme,
  );
