const isObject = (value: unknown): value is Readonly<Record<string, unknown>> => typeof value === "object" && value !== null;

/** Whether two values are the same JSON: the order of keys does not matter, and a key that is undefined is absent. */
export function same(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (!isObject(a) || !isObject(b) || Array.isArray(a) !== Array.isArray(b)) return a === b;
  if (Array.isArray(a) && Array.isArray(b) && a.length !== b.length) return false;
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  for (const key of keys) if (!same(own(a, key), own(b, key))) return false;
  return true;
}

/** The value of a key that is the object's own. */
export const own = (value: Readonly<Record<string, unknown>>, key: string): unknown => (Object.hasOwn(value, key) ? value[key] : undefined);
