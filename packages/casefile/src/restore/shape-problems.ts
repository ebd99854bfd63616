import type { z } from "zod";
import {
  type Bounds,
  type Expected,
  type JsonKind,
  type Path,
  type PathPart,
  type PlacedProblem,
  placed,
  suggestionFor,
  valueAt,
} from "../problems/index.js";
import { PATTERN_NAMES } from "../schema/scalars.js";
import { schemaAt, unwrapped } from "../schema/shape-of.js";
import { chosenForm } from "../schema/variant.js";

type Issue = z.core.$ZodIssue;
type Schema = z.core.$ZodType;

/** What is being looked at, carried through the nested findings. */
interface Looked {
  readonly schema: Schema;
  readonly root: unknown;
}

/** A value is quoted in a problem, but not at any length. */
const QUOTE_LENGTH = 60;

export function jsonKind(value: unknown): JsonKind {
  if (value === null || value === undefined) return "null";
  if (Array.isArray(value)) return "array";
  return typeof value as JsonKind;
}

const quote = (value: unknown): string => {
  const text = typeof value === "string" ? value : (JSON.stringify(value) ?? "");
  return text.length > QUOTE_LENGTH ? `${text.slice(0, QUOTE_LENGTH)}...` : text;
};

/** The validator's findings as our own problems: codes and numbers, none of its sentences. */
export function shapeProblems(schema: Schema, root: unknown, issues: readonly Issue[]): readonly PlacedProblem[] {
  return issues.flatMap((issue) => translate({ schema, root }, issue, []));
}

function translate(looked: Looked, issue: Issue, above: Path): readonly PlacedProblem[] {
  const place = [...above, ...(issue.path as readonly PathPart[])];
  const value = valueAt(looked.root, place);
  switch (issue.code) {
    case "invalid_union":
      return unionProblems(looked, issue, place, value);
    case "invalid_type":
      if (issue.expected === "never") return [placed(place, "key-not-here", { key: String(place.at(-1)) })];
      return [value === undefined ? missing(place) : wrongType(place, issue.expected, value)];
    case "invalid_value": {
      const allowed = issue.values.map(String);
      return [value === undefined ? missing(place, allowed) : notAllowed(place, value, allowed)];
    }
    case "too_small": {
      const minimum = Number(issue.minimum);
      return [outOfRange(place, issue.origin, value, issue.inclusive === false ? { above: minimum } : { minimum })];
    }
    case "too_big": {
      const maximum = Number(issue.maximum);
      return [outOfRange(place, issue.origin, value, issue.inclusive === false ? { below: maximum } : { maximum })];
    }
    case "invalid_format": {
      const expected = PATTERN_NAMES.get(String(issue.pattern));
      if (!expected) throw new Error(`pattern without a name: ${String(issue.pattern)}`);
      return [placed(place, "wrong-form", { expected, got: quote(value) })];
    }
    default:
      throw new Error(`the schema uses a check that has no problem of its own: ${issue.code}`);
  }
}

/** Only the form that was meant is spoken of. */
function unionProblems(
  looked: Looked,
  issue: Issue & { readonly code: "invalid_union" },
  place: Path,
  value: unknown,
): readonly PlacedProblem[] {
  if ("options" in issue && issue.options) {
    const allowed = issue.options.map(String);
    return [value === undefined ? missing(place, allowed) : notAllowed(place, value, allowed)];
  }
  const schema = schemaAt(looked.schema, looked.root, place);
  if (jsonKind(value) !== "object" || !schema) return [value === undefined ? missing(place) : wrongType(place, "object", value)];
  const form = chosenForm(unwrapped(schema), value as Readonly<Record<string, unknown>>) ?? 0;
  return (issue.errors[form] ?? []).flatMap((inner) => translate(looked, inner, place));
}

function missing(place: Path, allowed?: readonly string[]): PlacedProblem {
  return placed(place, "missing", { key: String(place.at(-1)), ...(allowed ? { allowed } : {}) });
}

const EXPECTED: Readonly<Record<string, Expected>> = { int: "whole-number", tuple: "array", record: "object" };

/** What a list of fixed length looks like, by its key. */
const EXAMPLES: Readonly<Record<string, string>> = { speedKmh: "[85, 110]", between: '["source", "driven"]', interval95: "[2.4, 2.7]" };

function wrongType(place: Path, expected: string, value: unknown): PlacedProblem {
  const example = expected === "tuple" ? EXAMPLES[String(place.at(-1))] : undefined;
  const params = { expected: EXPECTED[expected] ?? (expected as Expected), got: jsonKind(value), value: quote(value) };
  return placed(place, "wrong-type", { ...params, ...(example === undefined ? {} : { example }) });
}

const notAllowed = (place: Path, value: unknown, allowed: readonly string[]): PlacedProblem =>
  placed(place, "not-allowed", { got: quote(value), allowed, ...suggestionFor(quote(value), allowed) });

function outOfRange(place: Path, origin: string, value: unknown, bounds: Bounds): PlacedProblem {
  if (Array.isArray(value)) return placed(place, "out-of-range", { of: "list", got: value.length, ...bounds });
  if (origin === "string") return placed(place, "out-of-range", { of: "text", got: String(value).length, ...bounds });
  return placed(place, "out-of-range", { of: "number", got: Number(value), ...bounds });
}
