/** Line breaks stay; every other control character, and those that turn the direction of text round, could make a line read as what it is not. */
const INVISIBLE = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u00ad\u061c\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufe00-\ufe0f\ufeff\ufff9-\uffff]|\p{Cs}|\p{Co}|\p{Cn}/gu;

/** "⟨U+1F527⟩": a character as its code point, where it cannot be shown as itself. */
export const codeOf = (character: string): string => `⟨U+${(character.codePointAt(0) as number).toString(16).toUpperCase().padStart(4, "0")}⟩`;

export const showInvisible = (text: string): string => text.replace(INVISIBLE, codeOf);

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
