import { codeOf } from "../content/show-invisible.js";

/** The text with every character of `missing` as its code. */
export const showCodes = (text: string, missing: ReadonlySet<string>): string =>
  missing.size === 0 ? text : Array.from(text, (character) => (missing.has(character) ? codeOf(character) : character)).join("");

/** The value with `change` made to every string in it, keys left alone. */
export function mapStrings<Value>(value: Value, change: (text: string) => string): Value {
  if (typeof value === "string") return change(value) as Value;
  if (Array.isArray(value)) return value.map((item) => mapStrings(item, change)) as Value;
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, item]) => [key, mapStrings(item, change)])) as Value;
}
