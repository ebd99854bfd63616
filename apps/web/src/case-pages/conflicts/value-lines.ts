import { type FieldNames, isFieldName } from "../../words/field-names.js";

export interface ValueWords {
  readonly names: FieldNames;
  readonly yes: string;
  readonly no: string;
  readonly nothing: string;
  /** With its unit, which the key tells. */
  readonly number: (value: number, key: string) => string;
  /** What a word of the file means: `driven-end`. */
  readonly code: (value: string) => string;
  /** What a section, a joint or another item is called, by its id. */
  readonly part: (id: string) => string;
}

/** Deeper than this nobody reads in a list of choices. */
const DEPTH = 3;

const isPlain = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** A value of the case file that stands under a key as lines of words, for somebody who has to choose between two. */
export function valueLines(value: unknown, words: ValueWords, key = "", depth = DEPTH): readonly string[] {
  if (value === undefined || value === null) return [words.nothing];
  if (typeof value === "number") return [words.number(value, key)];
  if (typeof value === "boolean") return [value ? words.yes : words.no];
  if (typeof value === "string") return [words.code(value)];
  if (depth === 0) return ["…"];
  if (Array.isArray(value)) {
    const short = value.every((item) => typeof item === "string" || typeof item === "number");
    if (short) return [value.map((item) => valueLines(item, words, key)[0]).join(" – ")];
    return value.flatMap((item) => itemLines(item, words, key, depth));
  }
  if (!isPlain(value)) return [String(value)];
  const { id, ...said } = value;
  const entries = Object.entries(said);
  // The heading says which item it is; an id alone is all there is to say.
  if (typeof id === "string" && entries.length === 0) return [words.part(id)];
  return entries.flatMap(([inner, item]) => {
    const name = isFieldName(inner, words.names) ? words.names[inner] : inner;
    // It is there by being named; other empty objects say nothing.
    if (isEmpty(item)) return inner === "support" ? [name] : [];
    const lines = valueLines(item, words, inner, depth - 1);
    return lines.length === 1 ? [`${name}: ${lines[0]}`] : [`${name}:`, ...lines];
  });
}

const isEmpty = (value: unknown): boolean => isPlain(value) && Object.keys(value).length === 0;

/** A section or a joint is one line: what it is called, and what is said of it. */
function itemLines(item: unknown, words: ValueWords, key: string, depth: number): readonly string[] {
  if (!isPlain(item) || typeof item.id !== "string") return valueLines(item, words, key, depth - 1);
  const name = words.part(item.id);
  const lines = valueLines(item, words, key, depth - 1);
  return [lines.length === 0 || lines[0] === name ? name : `${name}: ${lines.join(", ")}`];
}
