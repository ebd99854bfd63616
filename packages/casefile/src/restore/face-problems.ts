import { type Path, type PlacedProblem, placed, valueAt } from "../problems/index.js";

/** No shaft of a driveline stands this steep, degrees: a case with such a reading along a shaft is refused. A gauge on a face across it shows about 90. */
export const STEEPEST_DEG = 75;
const BEYOND_PLUMB = 105;
/** Below a display's step: the rounding of the way from 90. */
const DECIMALS = 3;

const list = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

/** Readings that are the bare display of a gauge held on a face. Asked of the document as it was written, since 91 is no size that the format knows. */
export const faceProblems = (document: unknown): readonly PlacedProblem[] =>
  list(valueAt(document, ["gauging"])).flatMap((gauging, g) =>
    list(valueAt(gauging, ["readings"])).flatMap((reading, r) => problemOf(reading, ["gauging", g, "readings", r, "deg"])),
  );

function problemOf(reading: unknown, place: Path): readonly PlacedProblem[] {
  const got = valueAt(reading, ["deg"]);
  if (typeof got !== "number" || got < STEEPEST_DEG || got > BEYOND_PLUMB || valueAt(reading, ["between"]) !== undefined) return [];
  const offPlumb = Number(Math.abs(90 - got).toFixed(DECIMALS));
  return [placed(place, "face-reading", { got, offPlumb, marked: valueAt(reading, ["face"]) === "square" })];
}
