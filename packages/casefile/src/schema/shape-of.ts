import { z } from "zod";
import { chosenForm } from "./variant.js";

type Schema = z.core.$ZodType;

/** What the schema knows about one value: the keys of an object with their schemas and whether other keys are anybody's, or the schema of each element of a list. */
export type Shape =
  | { readonly kind: "object"; readonly keys: ReadonlyMap<string, Schema>; readonly open: boolean }
  | { readonly kind: "list"; readonly element: (index: number) => Schema | null }
  | { readonly kind: "leaf" };

const LEAF: Shape = { kind: "leaf" };

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** The shape that a value was meant to have, choosing among the forms of a variant by the value itself. */
export function shapeOf(wrapped: Schema, value: unknown): Shape {
  const schema = unwrapped(wrapped);
  if (schema instanceof z.ZodObject) {
    return { kind: "object", keys: new Map(Object.entries(schema.shape)), open: schema.def.catchall instanceof z.ZodUnknown };
  }
  if (schema instanceof z.ZodArray) return { kind: "list", element: () => schema.element };
  if (schema instanceof z.ZodTuple) {
    const items = schema.def.items;
    return { kind: "list", element: (index) => items[index] ?? null };
  }
  // A union of kinds is one as well, so it has to be asked first.
  if (schema instanceof z.ZodDiscriminatedUnion) return isObject(value) ? kindOf(schema, value) : LEAF;
  if (schema instanceof z.ZodUnion && isObject(value)) {
    const form = schema.options[chosenForm(schema, value) ?? 0];
    return form ? shapeOf(form, value) : LEAF;
  }
  return LEAF;
}

function kindOf(schema: z.ZodDiscriminatedUnion, value: Readonly<Record<string, unknown>>): Shape {
  const key = schema.def.discriminator;
  const option = schema.options.find((form) => form instanceof z.ZodObject && z.safeParse(form.shape[key] as Schema, value[key]).success);
  return option ? shapeOf(option, value) : LEAF;
}

/** The schema of the value at a path, or null where the schema knows nothing of it. */
export function schemaAt(schema: Schema, root: unknown, path: readonly (string | number)[]): Schema | null {
  let here: Schema | null = schema;
  let value = root;
  for (const part of path) {
    if (!here) return null;
    const shape = shapeOf(here, value);
    if (shape.kind === "leaf") return null;
    here = (shape.kind === "list" ? shape.element(Number(part)) : shape.keys.get(String(part))) ?? null;
    value = typeof value === "object" && value !== null ? (value as Record<string | number, unknown>)[part] : undefined;
  }
  return here;
}

/** A schema without the wrappers that let a key be absent or null. */
export const unwrapped = (schema: Schema): Schema =>
  schema instanceof z.ZodOptional || schema instanceof z.ZodNullable ? unwrapped(schema.unwrap()) : schema;
