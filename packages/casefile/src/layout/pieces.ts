import type { CaseDriveline, CaseJoint, CaseSection } from "../schema/case.js";

/** How many sections a propeller shaft usually has. */
export const PIECES = [1, 2, 3] as const;
export type Pieces = (typeof PIECES)[number];

type Shaft = Pick<CaseDriveline, "sections" | "joints">;

const SECTIONS: Readonly<Record<Pieces, readonly string[]>> = { 1: ["shaft"], 2: ["front", "back"], 3: ["front", "middle", "back"] };

/** A shaft with every part in its place: a bearing at each joint between sections, phasings at their usual value and marked as not measured, nothing else claimed. */
export const emptyShaft = (pieces: Pieces): Shaft => ({
  sections: SECTIONS[pieces].map((id) => ({ id, phasingDeg: 0, phasingMeasured: false })),
  joints: Array.from({ length: pieces + 1 }, (_, k) => {
    const joint = { id: `J${k + 1}`, kind: "cross" as const };
    return k > 0 && k < pieces ? { ...joint, support: {} } : joint;
  }),
});

/**
 * The driveline with its shaft in another number of pieces. The first and the last part stay what they are, and those between by their place; only a shaft
 * in one piece shares no section with one in several. Parts get the usual ids, so nothing may name them yet: see `arePartsNamed`.
 */
export function inPieces(driveline: CaseDriveline, pieces: Pieces): CaseDriveline {
  const { sections, joints } = driveline;
  if (sections.length === pieces) return driveline;
  const empty = emptyShaft(pieces);
  const isWhole = pieces === 1 || sections.length === 1;
  return {
    ...driveline,
    sections: isWhole ? empty.sections : kept<CaseSection>(sections, empty.sections),
    joints: kept<CaseJoint>(joints, empty.joints),
  };
}

/** What stood at either end and in the same place between, under the ids of where it stands now. */
const kept = <Part extends { readonly id: string }>(before: readonly Part[], empty: readonly Part[]): readonly Part[] =>
  empty.map((fresh, k) => {
    const isLast = k === empty.length - 1;
    const part = isLast ? before.at(-1) : k < before.length - 1 ? before[k] : undefined;
    return part ? { ...part, id: fresh.id } : fresh;
  });
