import type { Case } from "@halfturn/casefile";
import { gaugingsStoodOn, withGaugingCounts, withGaugingNames } from "./gauging-names.js";
import { itemKeys } from "./item-keys.js";
import { keptDrivelines } from "./kept-drivelines.js";
import { type Clash, mergeValues } from "./merge-values.js";
import { type Place, placeText, withValue } from "./place.js";
import { same } from "./same.js";

/** A field that both sides changed, each in its own way. undefined: it is not there. */
export interface MergeConflict {
  /** As the merged case spells it: `gauging[0].readings[2]`. */
  readonly path: string;
  /** The same by what the items of lists are: it holds when the case goes on. */
  readonly place: Place;
  readonly base: unknown;
  readonly mine: unknown;
  readonly theirs: unknown;
}

export interface MergedCase {
  /** Holds mine where there is a conflict, and what is left where one side took it out. */
  readonly merged: Case;
  readonly conflicts: readonly MergeConflict[];
}

/**
 * What two devices made of one case, in one. Lists are matched by id, readings by where and how they were taken, so that additions of both sides are kept; no edit
 * of either side is lost unless it stands in a conflict. Pure; `mergeCases(base, a, base)` and `mergeCases(base, base, a)` are a.
 */
export function mergeCases(base: Case, mine: Case, theirs: Case): MergedCase {
  const clashes: Clash[] = [];
  const [was, here, there] = [withGaugingNames(base), withGaugingNames(mine), withGaugingNames(theirs)];
  const value = mergeValues({ base: was, mine: here, theirs: there }, "", [], clashes);
  const unstamped = clashes.filter(({ place }) => !isStamp(place));
  const stamped = unstamped.length < clashes.length ? withValue(value, STAMP, later(mine, theirs)) : value;
  const drivelines = keptDrivelines(base, mine, theirs);
  const built = drivelines.reduce<unknown>((document, { clash, kept }) => withValue(document, clash.place, kept), stamped);
  const noted = [
    ...unstamped.filter(({ place }) => !drivelines.some(({ clash }) => isBelow(place, clash.place))),
    ...drivelines.map(({ clash }) => clash),
  ];
  const { document, lost } = keptStanding(built as NamedCase, was, here, there);
  const merged = withGaugingCounts(document);
  return { merged, conflicts: [...noted, ...lost].map((clash) => ({ path: placeText(merged, clash.place), ...clash })) };
}

/** The case with another value where there was a conflict; undefined takes it out. */
export function resolveConflict(document: Case, { place }: Pick<MergeConflict, "place">, value: unknown): Case {
  return withGaugingCounts(withValue(withGaugingNames(document), place, value) as NamedCase);
}

const isBelow = (place: Place, above: Place): boolean => same(place.slice(0, above.length), above);

type NamedCase = ReturnType<typeof withGaugingNames>;

/** The time of the last change is no one's edit: the later one stands. */
const STAMP: Place = [{ key: "updatedAt" }];
const isStamp = (place: Place): boolean =>
  place.length === 1 && place[0] !== undefined && "key" in place[0] && place[0].key === "updatedAt";
const later = (mine: Case, theirs: Case): string | undefined =>
  (mine.updatedAt ?? "") > (theirs.updatedAt ?? "") ? mine.updatedAt : theirs.updatedAt;

/** A gauging that one side took out while the other's correction stands on it comes back, as a conflict. */
function keptStanding(
  named: NamedCase,
  base: NamedCase,
  mine: NamedCase,
  theirs: NamedCase,
): { readonly document: NamedCase; readonly lost: readonly Clash[] } {
  const listOf = (one: NamedCase): readonly unknown[] => (Array.isArray(one.gauging) ? one.gauging : []);
  const lost: Clash[] = [];
  let document = named;
  for (const name of new Set(gaugingsStoodOn(named))) {
    if (itemKeys("gauging", listOf(document)).includes(name)) continue;
    const find = (one: NamedCase) => listOf(one)[itemKeys("gauging", listOf(one)).indexOf(name)];
    const [was, here, there] = [find(base), find(mine), find(theirs)];
    const place: Place = [{ key: "gauging" }, { item: name }];
    document = withValue(document, place, here ?? there ?? was) as NamedCase;
    lost.push({ place, base: was, mine: here, theirs: there });
  }
  return { document, lost };
}
