import type { z } from "zod";
import { nearest, type Path, type PlacedProblem, pathText, placed } from "../problems/index.js";
import type { Case } from "../schema/case.js";
import { caseSchema } from "../schema/case-schema.js";
import { shapeOf } from "../schema/shape-of.js";

/** Keys with this beginning are somebody's own and never taken for a slip. */
const OWN_PREFIX = "x-";

interface UnknownKey {
  readonly place: Path;
  readonly key: string;
  /** The known key that was most likely meant; null where none is near. */
  readonly suggestion: string | null;
}

/** Every key that the schema does not know, but for those that say by their beginning that they are somebody's own. */
function unknownKeys(schema: z.core.$ZodType, value: unknown, place: Path): readonly UnknownKey[] {
  if (typeof value !== "object" || value === null) return [];
  const shape = shapeOf(schema, value);
  if (shape.kind === "list" && Array.isArray(value)) {
    return value.flatMap((item, index) => {
      const element = shape.element(index);
      return element ? unknownKeys(element, item, [...place, index]) : [];
    });
  }
  if (shape.kind !== "object" || Array.isArray(value)) return [];
  const known = [...shape.keys.keys()];
  return Object.entries(value).flatMap(([key, inner]) => {
    const schemaOfKey = shape.keys.get(key);
    if (schemaOfKey) return unknownKeys(schemaOfKey, inner, [...place, key]);
    return shape.open || key.startsWith(OWN_PREFIX) ? [] : [{ place: [...place, key], key, suggestion: nearest(key, known) }];
  });
}

/** Unknown keys so near to a known one of the same object that they are most likely slips. */
export const unknownKeyProblems = (schema: z.core.$ZodType, value: unknown): readonly PlacedProblem[] =>
  unknownKeys(schema, value, []).flatMap(({ place, key, suggestion }) =>
    suggestion === null ? [] : [placed(place, "unknown-key-near", { key, suggestion })],
  );

/** Paths of the keys that a sound case has and nothing reads: kept as they are, written back, and without effect. */
export const keptKeys = (document: Case): readonly string[] => unknownKeys(caseSchema, document, []).map(({ place }) => pathText(place));
