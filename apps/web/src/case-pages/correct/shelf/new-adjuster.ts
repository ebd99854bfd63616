import type { Case, CaseAdjuster } from "@halfturn/casefile";
import { ADJUSTER_KINDS } from "@halfturn/engine/correction";

export type AdjusterKind = CaseAdjuster["kind"];

const IDS: Readonly<Record<AdjusterKind, string>> = {
  "axle-wedge": "wedge",
  "support-drop": "bearing-drop",
  "support-shift": "bearing-shift",
  "mount-spacer": "mount",
  "ride-height": "ride-height",
  rephase: "turn",
  "link-length": "link",
};

/** The kinds that a driveline leaves room for: a bearing to move needs an inner joint, a yoke to turn needs a section. */
export const kindsFor = ({ joints, sections }: Case["drivelines"][number]): readonly AdjusterKind[] =>
  ADJUSTER_KINDS.filter((kind) => {
    if (kind === "support-drop" || kind === "support-shift") return joints.length > 2;
    return kind !== "rephase" || sections.length > 0;
  });

/** An id that the case does not have yet. */
export function freeId(kind: AdjusterKind, adjusters: readonly Pick<CaseAdjuster, "id">[]): string {
  const stem = IDS[kind];
  const taken = new Set(adjusters.map(({ id }) => id));
  if (!taken.has(stem)) return stem;
  let number = 2;
  while (taken.has(`${stem}-${number}`)) number += 1;
  return `${stem}-${number}`;
}

/** A new adjuster with the sizes that a shop usually has (common practice, no source), nothing fitted, to be put right by who knows the shelf. */
export function newAdjuster(kind: AdjusterKind, id: string, driveline: Case["drivelines"][number], label: string): CaseAdjuster {
  const common = { id, label, labour: 1 };
  const on = { ...common, driveline: driveline.id };
  const support = driveline.joints.find((joint) => joint.support) ?? driveline.joints[1] ?? driveline.joints[0];
  const joint = support?.id ?? "J1";
  switch (kind) {
    case "axle-wedge":
      return { kind, ...on, stock: { sizesDeg: [-3, -2, -1, 1, 2, 3] }, fittedDeg: 0 };
    case "support-drop":
      return { kind, ...on, joint, stock: { minMm: 0, maxMm: 15, stepMm: 3 }, fittedMm: 0 };
    case "support-shift":
      return { kind, ...on, joint, stock: { minMm: -8, maxMm: 8, stepMm: 2 }, fittedMm: 0 };
    case "mount-spacer":
      return { kind, ...common, stock: { sizesMm: [3, 6, 9] }, fittedMm: 0 };
    case "ride-height":
      return { kind, ...on, stock: { minMm: -30, maxMm: 30, stepMm: 5 } };
    case "rephase":
      return { kind, ...on, section: driveline.sections[0]?.id ?? "", splineTeeth: 16 };
    case "link-length":
      return { kind, ...on, link: "upper", stock: { minMm: -10, maxMm: 10, stepMm: 1 } };
  }
}

/** What most shops can do to this driveline without making anything: move each support bearing, turn the axle on its pads (common practice, no source). */
export function usualParts(
  driveline: Case["drivelines"][number],
  labelOf: (kind: AdjusterKind) => string,
  others: readonly Pick<CaseAdjuster, "id">[] = [],
): readonly CaseAdjuster[] {
  const supported = driveline.joints.filter(({ support }) => support);
  const kinds: readonly AdjusterKind[] = [...supported.map(() => "support-drop" as const), "axle-wedge"];
  let parts: readonly CaseAdjuster[] = [];
  for (const [k, kind] of kinds.entries()) {
    const part = newAdjuster(kind, freeId(kind, [...others, ...parts]), driveline, labelOf(kind));
    parts = [...parts, part.kind === "support-drop" ? { ...part, joint: supported[k]?.id ?? part.joint } : part];
  }
  return parts;
}
