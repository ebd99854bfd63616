import { type Path, type PlacedProblem, pathText, placed, suggestionFor } from "../problems/index.js";
import type { CaseDriveline, CaseGauge, CaseGauging, CaseHeading, CaseReading } from "../schema/case.js";
import { placeOnShaft, placesOf, shaftsOf } from "../schema/place-on-shaft.js";
import { contradicts } from "./relations.js";

const ENDS = ["driven-end", "source-end"];
const SIDES = ["left", "right"];
const DISPLAY_SIDES = ["display-left", "display-right"];

/** Readings and headings have to name shafts that the driveline has, and a size that is not nought needs its word for the direction. */
export const gaugingProblems = (gauging: CaseGauging, driveline: CaseDriveline, place: Path): readonly PlacedProblem[] => [
  ...zeroCheckProblems(gauging.gauge.zeroCheck ?? [], [...place, "gauge", "zeroCheck"]),
  ...gauging.readings.flatMap((reading, k) => readingProblems(reading, driveline, [...place, "readings", k])),
  ...(gauging.headings ?? []).flatMap((heading, k) => headingProblems(heading, driveline, [...place, "headings", k])),
  ...phasingProblems(gauging.phasings ?? [], driveline, [...place, "phasings"]),
];

/** Each section is phased once, and is there. */
function phasingProblems(
  phasings: NonNullable<CaseGauging["phasings"]>,
  { sections }: CaseDriveline,
  place: Path,
): readonly PlacedProblem[] {
  const allowed = sections.map(({ id }) => id);
  return phasings.flatMap(({ section: got }, k) => {
    const first = phasings.findIndex(({ section }) => section === got);
    if (!allowed.includes(got)) {
      return [placed([...place, k, "section"], "unknown-reference", { of: "section", got, allowed, ...suggestionFor(got, allowed) })];
    }
    return first < k ? [placed([...place, k, "section"], "duplicate-id", { id: got, first: pathText([...place, first, "section"]) })] : [];
  });
}

function zeroCheckProblems(pairs: NonNullable<CaseGauge["zeroCheck"]>, place: Path): readonly PlacedProblem[] {
  const words = pairs.flatMap(({ deg, lower }, k) => directionWord(deg, lower, [...place, k, "lower"], DISPLAY_SIDES));
  if (pairs.length % 2 === 0) return words;
  return [placed(place, "count-mismatch", { of: "zero-check", expected: pairs.length + 1, got: pairs.length }), ...words];
}

function readingProblems(reading: CaseReading, driveline: CaseDriveline, place: Path): readonly PlacedProblem[] {
  const places = placesOf(driveline);
  if ("between" in reading) {
    const unknown = reading.between.flatMap((at, k) => unknownShaft(at, places, [...place, "between", k]));
    const [from, to] = reading.between.map((at) => placeOnShaft(at).shaft);
    const same = from === to && unknown.length === 0 ? [placed([...place, "between"], "same-shaft", { shaft: String(from) })] : [];
    return [...unknown, ...same, ...directionWord(reading.deg, reading.lower, [...place, "lower"], ENDS)];
  }
  const unknown = unknownShaft(reading.at, places, [...place, "at"]);
  if ("face" in reading) return [...unknown, ...directionWord(reading.deg, reading.topLeans, [...place, "topLeans"], ENDS)];
  return [...unknown, ...directionWord(reading.deg, reading.lower, [...place, "lower"], ENDS)];
}

function headingProblems(heading: CaseHeading, driveline: CaseDriveline, place: Path): readonly PlacedProblem[] {
  const unknown = unknownShaft(heading.of, shaftsOf(driveline), [...place, "of"]);
  if ("deg" in heading) return [...unknown, ...directionWord(heading.deg, heading.toward, [...place, "toward"], SIDES)];
  const over = heading.overMm ?? driveline.sections.find(({ id }) => id === heading.of)?.lengthMm;
  return [
    ...unknown,
    ...directionWord(heading.lateralMm, heading.toward, [...place, "toward"], SIDES),
    ...(over === undefined && unknown.length === 0 ? [placed([...place, "overMm"], "missing", { key: "overMm" })] : []),
    ...contradicts([...place, "lateralMm"], [heading.lateralMm, "less-than", over], heading.overMm === undefined ? "lengthMm" : "overMm"),
  ];
}

function unknownShaft(got: string, allowed: readonly string[], place: Path): readonly PlacedProblem[] {
  return allowed.includes(got) ? [] : [placed(place, "unknown-shaft", { got, allowed, ...suggestionFor(got, allowed) })];
}

/** Nought points nowhere; anything else needs the word that says which way. */
function directionWord(size: number, word: string | undefined, place: Path, allowed: readonly string[]): readonly PlacedProblem[] {
  return size === 0 || word !== undefined ? [] : [placed(place, "missing", { key: String(place.at(-1)), allowed })];
}
