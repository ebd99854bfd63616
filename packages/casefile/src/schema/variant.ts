import { z } from "zod";

type Choose = (value: Readonly<Record<string, unknown>>) => number;

const choosers = new WeakMap<object, Choose>();

/**
 * Objects of several forms told apart by which keys they carry.
 * The chooser decides which form was meant, so that problems speak of that form alone and never of "no form matched".
 */
export function variant<const Options extends readonly [z.ZodObject, ...z.ZodObject[]]>(
  options: Options,
  choose: Choose,
): z.ZodUnion<Options> {
  const schema = z.union(options);
  choosers.set(schema, choose);
  return schema;
}

/** Which form of a variant a value was meant to be; null when the schema is not a variant. */
export const chosenForm = (schema: z.core.$ZodType, value: Readonly<Record<string, unknown>>): number | null =>
  choosers.get(schema)?.(value) ?? null;
