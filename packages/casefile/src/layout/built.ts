import type { Case, CaseDriveline, RunsToward } from "../schema/case.js";
import { emptyShaft, type Pieces } from "./pieces.js";

/** An empty driveline to the rear axle. */
export const rearDriveline = (pieces: Pieces): CaseDriveline => built("rear", "rearward", emptyShaft(pieces));

/** An empty driveline to the front axle: in one piece, with a double cross joint at the transfer case. */
export function frontDriveline(): CaseDriveline {
  const { sections, joints } = emptyShaft(1);
  return built("front", "forward", { sections, joints: joints.map((joint, k) => (k === 0 ? { ...joint, kind: "double-cross" } : joint)) });
}

const built = (id: string, runs: RunsToward, { sections, joints }: Pick<CaseDriveline, "sections" | "joints">): CaseDriveline => ({
  id,
  runs,
  source: {},
  sections,
  driven: {},
  joints,
});

/** The case with one driveline more, after the others: what is told of the first one's place stays true. */
export function withDriveline(document: Case, runs: RunsToward): Case {
  const { drivelines } = document;
  const added = runs === "forward" ? frontDriveline() : rearDriveline(1);
  const taken = (id: string): boolean => drivelines.some((driveline) => driveline.id === id);
  let id = added.id;
  for (let k = 2; taken(id); k++) id = `${added.id}-${k}`;
  return { ...document, drivelines: [...drivelines, { ...added, id }] };
}

/** The case without a driveline that nothing names (see `isNamed`). */
export const withoutDriveline = (document: Case, id: string): Case => ({
  ...document,
  drivelines: document.drivelines.filter((driveline) => driveline.id !== id),
});
