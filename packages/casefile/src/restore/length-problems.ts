import { type Path, type PlacedProblem, placed } from "../problems/index.js";
import type { Case } from "../schema/case.js";

/** No propeller-shaft section, no measured stretch and no distance from axle to joint is shorter, and no wheel rolls less, in millimetres: common practice, no source. */
export const SHORTEST_MM = 20;

/** Lengths that were most likely written in metres. */
export const lengthProblems = ({ drivelines, gauging, vehicle }: Case): readonly PlacedProblem[] => [
  ...(vehicle?.tyre && "rollingCircumferenceMm" in vehicle.tyre
    ? inMetres(vehicle.tyre.rollingCircumferenceMm, ["vehicle", "tyre", "rollingCircumferenceMm"])
    : []),
  ...drivelines.flatMap(({ sections, axle }, d) => [
    ...sections.flatMap(({ lengthMm }, s) => inMetres(lengthMm, ["drivelines", d, "sections", s, "lengthMm"])),
    ...inMetres(axle?.centreToJointMm, ["drivelines", d, "axle", "centreToJointMm"]),
  ]),
  ...(gauging ?? []).flatMap(({ headings }, g) =>
    (headings ?? []).flatMap((heading, h) =>
      "overMm" in heading ? inMetres(heading.overMm, ["gauging", g, "headings", h, "overMm"]) : [],
    ),
  ),
];

const inMetres = (got: number | undefined, place: Path): readonly PlacedProblem[] =>
  got === undefined || got >= SHORTEST_MM ? [] : [placed(place, "length-unit", { got, meant: Number((got * 1000).toPrecision(12)) })];
