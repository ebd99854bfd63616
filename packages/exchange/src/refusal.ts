import { z } from "zod";

/** Why the server did not do what was asked: a code to act on, the place it is about, and a sentence in the language asked for. */
export const refusal = z.object({
  code: z.string(),
  /** Spelled as in the case file or the request; empty for the whole. */
  path: z.string(),
  params: z.record(z.string(), z.unknown()),
  message: z.string(),
});

/** A refusal that says everything that is wrong with a document at once. */
export const refusals = refusal.extend({ problems: z.array(refusal).optional() }).meta({ id: "Refusal" });

export type Refusal = Readonly<z.infer<typeof refusal>>;
export type Refusals = Refusal & { readonly problems?: readonly Refusal[] | undefined };
