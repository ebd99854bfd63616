import { hasWholeItems, isUnmatched, isWhole, itemKeys, keysFrom } from "./item-keys.js";
import type { Place } from "./place.js";
import { own, same } from "./same.js";

/** One value that both sides changed, each in its own way. undefined: it is not there. */
export interface Clash {
  readonly place: Place;
  readonly base: unknown;
  readonly mine: unknown;
  readonly theirs: unknown;
}

interface Sides {
  readonly base: unknown;
  readonly mine: unknown;
  readonly theirs: unknown;
}

type Plain = Readonly<Record<string, unknown>>;

const isPlain = (value: unknown): value is Plain => typeof value === "object" && value !== null && !Array.isArray(value);
const isList = (value: unknown): value is readonly unknown[] => Array.isArray(value);

/** How far down values are looked into. */
type Depth = "into" | "whole";

/**
 * Three values in one: what only one side changed is taken from it, and objects and lists are looked into. Where both changed the same, mine stands for now and the
 * clash is noted; against a removal the value that is left stands, so that nothing is gone before somebody chose.
 */
export function mergeValues(sides: Sides, name: string, place: Place, clashes: Clash[], depth: Depth = "into"): unknown {
  const { base, mine, theirs } = sides;
  if (same(mine, theirs) || same(base, theirs)) return mine;
  if (same(base, mine)) return theirs;
  if (depth === "into" && !isWhole(name)) {
    if (isPlain(mine) && isPlain(theirs) && (isPlain(base) || base === undefined) && !rebuilt(base, mine, theirs)) {
      return mergeObjects(base ?? {}, mine, theirs, place, clashes);
    }
    if (isList(mine) && isList(theirs) && (isList(base) || base === undefined) && ![...(base ?? []), ...mine, ...theirs].some(isNumber)) {
      return mergeLists(base ?? [], mine, theirs, name, place, clashes);
    }
  }
  clashes.push({ place, base, mine, theirs });
  return mine === undefined ? theirs : mine;
}

const isNumber = (item: unknown): boolean => isUnmatched([item]);

/** One side changed which sections and joints a driveline is made of, and the other changed these too: parts of two builds make no third. */
function rebuilt(base: Plain | undefined, mine: Plain, theirs: Plain): boolean {
  if (!isList(mine.sections) || !isList(mine.joints)) return false;
  const parts = ({ sections, joints }: Plain) => [sections, joints];
  const build = (driveline: Plain) => parts(driveline).map((list) => (isList(list) ? itemKeys("sections", list) : []));
  if (same(build(mine), build(theirs))) return false;
  const was = parts(base ?? {});
  return !same(was, parts(mine)) && !same(was, parts(theirs));
}

function mergeObjects(base: Plain, mine: Plain, theirs: Plain, place: Place, clashes: Clash[]): Plain {
  const keys = [...new Set([...Object.keys(mine), ...Object.keys(theirs)])];
  return Object.fromEntries(
    keys.flatMap((key) => {
      const sides = { base: own(base, key), mine: own(mine, key), theirs: own(theirs, key) };
      const value = mergeValues(sides, key, [...place, { key }], clashes);
      return value === undefined ? [] : [[key, value]];
    }),
  );
}

function mergeLists(
  base: readonly unknown[],
  mine: readonly unknown[],
  theirs: readonly unknown[],
  name: string,
  place: Place,
  clashes: Clash[],
): readonly unknown[] {
  const [was, here, there] = [keyed(name, base, base), keyed(name, base, mine), keyed(name, base, theirs)];
  const whole = hasWholeItems(name);
  return orderOf([...was.keys()], [...here.keys()], [...there.keys()]).flatMap((item) => {
    const sides = { base: was.get(item), mine: here.get(item), theirs: there.get(item) };
    const step = whole ? { item, like: sides.mine ?? sides.theirs } : { item };
    const value = mergeValues(sides, "", [...place, step], clashes, whole ? "whole" : "into");
    return value === undefined ? [] : [value];
  });
}

const keyed = (name: string, base: readonly unknown[], items: readonly unknown[]): ReadonlyMap<string, unknown> => {
  const keys = keysFrom(name, base, items);
  return new Map(items.map((item, k) => [keys[k] as string, item]));
};

/** The order of the side that changed it, mine where both did; what only the other has follows what it followed there. */
function orderOf(base: readonly string[], mine: readonly string[], theirs: readonly string[]): readonly string[] {
  const [led, other] = same(base, mine) ? [theirs, mine] : [mine, theirs];
  const order = [...led];
  other.forEach((item, k) => {
    if (order.includes(item)) return;
    const before = other.slice(0, k).findLast((candidate) => order.includes(candidate));
    order.splice(before === undefined ? 0 : order.indexOf(before) + 1, 0, item);
  });
  return order;
}
