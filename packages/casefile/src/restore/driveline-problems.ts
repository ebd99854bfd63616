import { type Path, type PlacedProblem, placed } from "../problems/index.js";
import type { CaseDriveline, CaseJoint, CaseSection } from "../schema/case.js";
import { RESERVED_IDS } from "../schema/place-on-shaft.js";
import { contradicts, duplicateIds } from "./relations.js";

/** n joints carry n - 1 sections; ids are unique within a driveline and leave `source` and `driven` alone. */
export function drivelineProblems(driveline: CaseDriveline, place: Path): readonly PlacedProblem[] {
  const { sections, joints, axle } = driveline;
  const expected = joints.length - 1;
  return [
    ...(sections.length === expected
      ? []
      : [placed([...place, "sections"], "count-mismatch", { of: "sections", expected, got: sections.length })]),
    ...duplicateIds(sections, [...place, "sections"]),
    ...sections.flatMap((section, k) => sectionProblems(section, [...place, "sections", k])),
    ...duplicateIds(joints, [...place, "joints"]),
    ...joints.flatMap((joint, k) => jointProblems(joint, [...place, "joints", k])),
    ...joints.flatMap((joint, k) => supportProblems(joint, sections[k - 1], sections[k], [...place, "joints", k, "support"])),
    ...contradicts(
      [...place, "axle", "casterMaximumDeg"],
      [axle?.casterMaximumDeg, "at-least", axle?.casterMinimumDeg],
      "casterMinimumDeg",
    ),
  ];
}

function sectionProblems({ id, tube }: CaseSection, place: Path): readonly PlacedProblem[] {
  const reserved = RESERVED_IDS.includes(id) ? [placed([...place, "id"], "reserved-id", { id })] : [];
  const radius = tube ? tube.outerDiameterMm / 2 : undefined;
  return [...reserved, ...contradicts([...place, "tube", "wallMm"], [tube?.wallMm, "less-than", radius], "outerDiameterMm / 2")];
}

/** A bearing sits on the section before its joint or on the one after it, so within that section's length. */
function supportProblems(
  { support }: CaseJoint,
  before: CaseSection | undefined,
  after: CaseSection | undefined,
  place: Path,
): readonly PlacedProblem[] {
  const on = support?.bearingIs === "driven-side" ? after : before;
  return contradicts([...place, "bearingToJointMm"], [support?.bearingToJointMm, "less-than", on?.lengthMm], "lengthMm");
}

function jointProblems({ kind, centring }: CaseJoint, place: Path): readonly PlacedProblem[] {
  if (!centring) return [];
  if (kind !== "double-cross") return [placed([...place, "centring"], "key-not-here", { key: "centring" })];
  return contradicts(
    [...place, "centring", "ballFromCrossMm"],
    [centring.ballFromCrossMm, "less-than", centring.crossesApartMm],
    "crossesApartMm",
  );
}
