const isObject = (value: unknown): value is Readonly<Record<string, unknown>> => typeof value === "object" && value !== null;

/**
 * Where two documents differ, as `vehicle.label`; a list that grew or shrank is one place, `gauging.0.readings[]`, and so is a pair of numbers. What both share is
 * not looked into, so that an edit costs what it changes.
 */
export function changedPlaces(before: unknown, after: unknown, place = ""): readonly string[] {
  if (Object.is(before, after)) return [];
  if (!isObject(before) || !isObject(after) || Array.isArray(before) !== Array.isArray(after)) return [place];
  if (Array.isArray(before) && Array.isArray(after)) {
    if (before.length !== after.length) return [`${place}[]`];
    if (after.every((item) => typeof item === "number")) return [place];
  }
  const keys = new Set([...Object.keys(before), ...Object.keys(after)]);
  return [...keys].flatMap((key) => changedPlaces(before[key], after[key], place ? `${place}.${key}` : key));
}
