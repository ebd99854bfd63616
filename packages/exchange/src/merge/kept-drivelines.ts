import { arePartsNamed, type Case, type CaseDriveline, isNamed } from "@halfturn/casefile";
import { itemKeys } from "./item-keys.js";
import type { Clash } from "./merge-values.js";
import type { Place } from "./place.js";
import { same } from "./same.js";

/** A driveline that has to stay as one side has it. */
export interface KeptDriveline {
  readonly clash: Clash;
  readonly kept: CaseDriveline;
}

/** Drivelines that one side built otherwise or took out while the other read, stocked or chose something for their parts: that would hang in the air, so they stay, as conflicts. */
export function keptDrivelines(base: Case, mine: Case, theirs: Case): readonly KeptDriveline[] {
  // Where nothing was agreed on, all that differs stands in a conflict anyway.
  const agreed: readonly CaseDriveline[] | undefined = base.drivelines;
  return (agreed ?? []).flatMap(({ id }) => {
    const [was, here, there] = [base, mine, theirs].map((side) => side.drivelines.find((driveline) => driveline.id === id));
    const place: Place = [{ key: "drivelines" }, { item: id }];
    const clash: Clash = { place, base: was, mine: here, theirs: there };
    if (here && !isWithin(here, there) && becameNamed(base, mine, id, there)) return [{ clash, kept: here }];
    if (there && !isWithin(there, here) && becameNamed(base, theirs, id, here)) return [{ clash, kept: there }];
    return [];
  });
}

/** Whether every part of a driveline is there in another. */
const isWithin = (one: CaseDriveline, other: CaseDriveline | undefined): boolean =>
  other !== undefined && same(partsOf(one), partsOf(other));

const partsOf = ({ sections, joints }: CaseDriveline): readonly string[] => [
  ...itemKeys("sections", sections),
  ...itemKeys("joints", joints),
];

/** Whether a side names what the other has changed, and nobody did before. */
const becameNamed = (base: Case, side: Case, id: string, other: CaseDriveline | undefined): boolean => {
  const names = other === undefined ? isNamed : arePartsNamed;
  return names(side, id) && !names(base, id);
};
