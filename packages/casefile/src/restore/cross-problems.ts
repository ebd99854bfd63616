import { type Path, type PlacedProblem, placed, suggestionFor } from "../problems/index.js";
import type { Case } from "../schema/case.js";
import { PART_NAMES } from "../schema/part-names.js";
import { adjusterProblems } from "./adjuster-problems.js";
import { drivelineProblems } from "./driveline-problems.js";
import { gaugingProblems } from "./gauging-problems.js";
import { lengthProblems } from "./length-problems.js";
import { limitProblems } from "./limit-problems.js";
import { contradicts, duplicateIds } from "./relations.js";

/** What the parts of a case say about one another: ids, references, counts, and pairs of numbers that cannot both be right. */
export const crossProblems = (document: Case): readonly PlacedProblem[] => [
  ...complaintProblems(document),
  ...accessoryProblems(document),
  ...(document.recordings ?? []).flatMap(({ gear }, k) => unknownGear(document, gear, ["recordings", k, "gear"])),
  ...duplicateIds(document.drivelines, ["drivelines"]),
  ...document.drivelines.flatMap((driveline, k) => drivelineProblems(driveline, ["drivelines", k])),
  ...lengthProblems(document),
  ...limitProblems(document),
  ...duplicateIds(document.states ?? [], ["states"]),
  ...(document.states ?? []).flatMap((state, k) => unknownDriveline(document, state.driveline, ["states", k, "driveline"])),
  ...(document.gauging ?? []).flatMap((gauging, k) => {
    const place = ["gauging", k];
    const driveline = document.drivelines.find(({ id }) => id === gauging.driveline);
    return driveline ? gaugingProblems(gauging, driveline, place) : unknownDriveline(document, gauging.driveline, [...place, "driveline"]);
  }),
  ...duplicateIds(document.adjusters ?? [], ["adjusters"]),
  ...(document.adjusters ?? []).flatMap((adjuster, k) => {
    const place = ["adjusters", k];
    const named = "driveline" in adjuster ? adjuster.driveline : undefined;
    return [...unknownDriveline(document, named, [...place, "driveline"]), ...adjusterProblems(adjuster, document.drivelines, place)];
  }),
];

function unknownDriveline(document: Case, named: string | undefined, place: Path): readonly PlacedProblem[] {
  const allowed = document.drivelines.map(({ id }) => id);
  if (named === undefined || allowed.includes(named)) return [];
  return [placed(place, "unknown-reference", { of: "driveline", got: named, allowed, ...suggestionFor(named, allowed) })];
}

/** A gear by a label that the vehicle does not list; without a list any label may be right. */
function unknownGear({ vehicle }: Case, gear: string | undefined, place: Path): readonly PlacedProblem[] {
  const gears = vehicle?.gears?.map(({ label }) => label) ?? [];
  if (gear === undefined || gears.length === 0 || gears.includes(gear)) return [];
  return [placed(place, "unknown-reference", { of: "gear", got: gear, allowed: gears, ...suggestionFor(gear, gears) })];
}

function complaintProblems(document: Case): readonly PlacedProblem[] {
  const { vehicle, complaint } = document;
  const gears = vehicle?.gears?.map(({ label }) => label) ?? [];
  const firstOf = (label: string) => gears.indexOf(label);
  const twice = gears.flatMap((label, k) =>
    firstOf(label) === k
      ? []
      : [placed(["vehicle", "gears", k, "label"], "duplicate-id", { id: label, first: `vehicle.gears[${firstOf(label)}].label` })],
  );
  const unknown = unknownGear(document, complaint?.gear, ["complaint", "gear"]);
  const [low, high] = complaint?.speedKmh ?? [0, 0];
  return [...twice, ...unknown, ...contradicts(["complaint", "speedKmh", 1], [high, "at-least", low], "speedKmh[0]")];
}

/** What an engine drives stands beside wheel, shafts and engine, so it may not be called by their names. */
function accessoryProblems({ vehicle }: Case): readonly PlacedProblem[] {
  const accessories = vehicle?.accessories ?? [];
  const place = ["vehicle", "accessories"];
  const reserved = accessories.flatMap(({ id }, k) =>
    PART_NAMES.includes(id) ? [placed([...place, k, "id"], "reserved-id", { id, of: "accessory" })] : [],
  );
  return [...duplicateIds(accessories, place), ...reserved];
}
