import type { z } from "zod";
import type { Case } from "../schema/case.js";
import { caseSchema } from "../schema/case-schema.js";
import { shapeOf } from "../schema/shape-of.js";

type Schema = z.core.$ZodType;
type Plain = Readonly<Record<string, unknown>>;

/**
 * The text of a case file: two spaces, one line feed at the end, same case and same `asRead` give the same bytes.
 * Keys keep the order of the case itself. With `asRead`, the case as it came from its file, keys that the file had stay where they were
 * and new ones follow in the order of the schema, whatever order a program added them in.
 */
export const serialise = (document: Case, asRead?: Case): string =>
  `${JSON.stringify(asRead ? ordered(caseSchema, document, asRead) : document, null, 2)}\n`;

function ordered(schema: Schema | null, value: unknown, before: unknown): unknown {
  if (Array.isArray(value)) {
    const shape = schema ? shapeOf(schema, value) : null;
    return value.map((item, index) =>
      ordered(shape?.kind === "list" ? shape.element(index) : null, item, counterpart(item, index, before)),
    );
  }
  if (!isObject(value)) return value;
  const shape = schema ? shapeOf(schema, value) : null;
  const known = shape?.kind === "object" ? shape.keys : new Map<string, Schema>();
  const old = isObject(before) ? before : {};
  // Object.fromEntries defines keys and never calls a setter, so a key named __proto__ is a key like any other.
  return Object.fromEntries(
    keysInOrder(value, Object.keys(old), [...known.keys()]).map((key) => [
      key,
      ordered(known.get(key) ?? null, value[key], Object.hasOwn(old, key) ? old[key] : undefined),
    ]),
  );
}

/** First the keys the file had, then new ones that the schema knows, then the rest as they came. */
function keysInOrder(value: Plain, old: readonly string[], known: readonly string[]): readonly string[] {
  return [...new Set([...old, ...known, ...Object.keys(value)])].filter((key) => Object.hasOwn(value, key));
}

/** The same item in the file: by id where there is one, by position otherwise. */
function counterpart(item: unknown, index: number, before: unknown): unknown {
  if (!Array.isArray(before)) return undefined;
  const id = isObject(item) ? item.id : undefined;
  if (typeof id !== "string") return before[index];
  return before.find((candidate) => isObject(candidate) && candidate.id === id);
}

const isObject = (value: unknown): value is Plain => typeof value === "object" && value !== null && !Array.isArray(value);
