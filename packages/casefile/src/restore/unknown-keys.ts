import type { z } from "zod";
import { nearest, type Path, type PlacedProblem, placed } from "../problems/index.js";
import { shapeOf } from "../schema/shape-of.js";

/** Keys with this beginning are somebody's own and never taken for a slip. */
const OWN_PREFIX = "x-";

/** Unknown keys so near to a known one of the same object that they are most likely slips. All other unknown keys are kept without a word. */
export function unknownKeyProblems(schema: z.core.$ZodType, value: unknown, place: Path = []): readonly PlacedProblem[] {
  if (typeof value !== "object" || value === null) return [];
  const shape = shapeOf(schema, value);
  if (shape.kind === "list" && Array.isArray(value)) {
    return value.flatMap((item, index) => {
      const element = shape.element(index);
      return element ? unknownKeyProblems(element, item, [...place, index]) : [];
    });
  }
  if (shape.kind !== "object" || Array.isArray(value)) return [];
  const known = [...shape.keys.keys()];
  return Object.entries(value).flatMap(([key, inner]) => {
    const schemaOfKey = shape.keys.get(key);
    if (schemaOfKey) return unknownKeyProblems(schemaOfKey, inner, [...place, key]);
    const suggestion = key.startsWith(OWN_PREFIX) ? null : nearest(key, known);
    return suggestion === null ? [] : [placed([...place, key], "unknown-key-near", { key, suggestion })];
  });
}
