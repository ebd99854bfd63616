import { z } from "zod";

/** A result with its standard uncertainty and the ends of its 95 % interval; null where it could not be told. */
export const quantity = z.object({ value: z.number(), u: z.number().min(0), interval95: z.tuple([z.number(), z.number()]) }).nullable();
