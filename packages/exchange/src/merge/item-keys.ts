import { same } from "./same.js";

type Item = Readonly<Record<string, unknown>>;

/** What makes an item of a list the same item on two devices, where it has no id. */
const LIST_KEYS: ReadonlyMap<string, (item: Item) => readonly unknown[]> = new Map([
  // What a reading is: where, against what, on which kind of face and from which side. Its value is what was read.
  ["readings", ({ at, between, face, side }) => [at, between, face, side]],
  ["headings", ({ of }) => [of]],
  ["gauging", ({ driveline, stage, takenAt }) => [driveline, stage, takenAt]],
  ["gears", ({ label }) => [label]],
  ["acceptedFindings", ({ code }) => [code]],
  ["corrections", ({ chosenAt }) => [chosenAt]],
  ["changes", ({ adjuster }) => [adjuster]],
  ["basis", ({ driveline }) => [driveline]],
]);

/** Items whose parts belong together: a reading's value and its lower end were seen at once, so no reading is made of two. */
const WHOLE_ITEMS: readonly string[] = ["readings", "headings"];

/** Values that are taken as a whole: pairs, forms that exclude one another, and what was worked out in one go. */
const WHOLE_VALUES: readonly string[] = [
  "speedKmh",
  "between",
  "zeroCheck",
  "stock",
  "suspension",
  "centring",
  "predicted",
  "instructions",
  "interval95",
];

export const isWhole = (key: string): boolean => WHOLE_VALUES.includes(key);
export const hasWholeItems = (list: string): boolean => WHOLE_ITEMS.includes(list);

const isItem = (value: unknown): value is Item => typeof value === "object" && value !== null && !Array.isArray(value);

/** A list of these has no items to match: it is taken as a whole. */
export const isUnmatched = (items: readonly unknown[]): boolean => items.some((item) => !isItem(item) && typeof item !== "string");

/** A key for each item of a list, the same on every device: its id, or what it is; the second of two alike gets a number. */
export function itemKeys(list: string, items: readonly unknown[]): readonly string[] {
  const seen = new Map<string, number>();
  return items.map((item) => {
    const key = itemKey(list, item);
    const before = seen.get(key) ?? 0;
    seen.set(key, before + 1);
    return before === 0 ? key : `${key} #${before}`;
  });
}

/**
 * Keys for a list that came from another: an item that stands in both has one key in both, though one before it was taken out; what is left over is matched in order.
 * Only where items are taken whole: others are known by their id.
 */
export function keysFrom(list: string, before: readonly unknown[], items: readonly unknown[]): readonly string[] {
  if (!hasWholeItems(list)) return itemKeys(list, items);
  const free = new Map(itemKeys(list, before).map((key, k) => [key, before[k]]));
  const take = (wanted: (key: string, item: unknown) => boolean): string | undefined => {
    const [key] = [...free].find((entry) => wanted(...entry)) ?? [];
    if (key !== undefined) free.delete(key);
    return key;
  };
  const kept = items.map((item) => take((_, candidate) => same(candidate, item)));
  const counts = new Map<string, number>();
  return items.map((item, k) => {
    const what = itemKey(list, item);
    const found = kept[k] ?? take((key) => unnumbered(key) === what);
    if (found !== undefined) return found;
    const fresh = (counts.get(what) ?? before.filter((other) => itemKey(list, other) === what).length) + 1;
    counts.set(what, fresh);
    return fresh === 1 ? what : `${what} #${fresh - 1}`;
  });
}

/** The key without the number that tells two alike apart. */
export const unnumbered = (key: string): string => key.replace(/ #\d+$/, "");

function itemKey(list: string, item: unknown): string {
  if (!isItem(item)) return JSON.stringify(item);
  const keyOf = LIST_KEYS.get(list);
  if (keyOf) return JSON.stringify(keyOf(item).map((part) => part ?? null));
  // What has neither is known by all it says: changed on one device, it is another item.
  return typeof item.id === "string" ? item.id : JSON.stringify(item, sorted);
}

const sorted = (_key: string, value: unknown): unknown =>
  isItem(value) ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1))) : value;
