import { DEVICE_HEADER, MAX_DEVICE_NAME, refusals } from "@halfturn/exchange";
import type { By } from "@halfturn/store";
import { z } from "@hono/zod-openapi";
import type { Context } from "hono";
import type { ServerParts } from "../app/server-parts.js";
import { deviceName } from "../http/device-name.js";
import { PROBLEM_JSON, refuse } from "../http/refuse.js";
import { pairedDeviceOf } from "../lan/access.js";

/** As long as a case file lets an id be. */
const LONGEST_ID = 200;

export const caseId = z
  .string()
  .min(1)
  .max(LONGEST_ID)
  .openapi({ param: { name: "id", in: "path" }, description: "The case's id, percent-encoded." });

export const idParam = z.object({ id: caseId });

export const deviceHeader = z.object({
  [DEVICE_HEADER]: z
    .string()
    .optional()
    .openapi({ description: `Name of the device, percent-encoded, at most ${MAX_DEVICE_NAME} characters.` }),
});

export const json = (schema: z.ZodType) => ({ "application/json": { schema } });

/** A case file; what it may hold is said by its own published schema, and every problem is answered at once. */
export const caseBody = z.looseObject({ format: z.literal("halfturn-case"), version: z.int() }).meta({ id: "Case" });

/** Answers with a refusal, by status. */
export const refused = (...statuses: readonly number[]) =>
  Object.fromEntries(
    statuses.map((status) => [status, { description: "Refused; `code` says why.", content: { [PROBLEM_JSON]: { schema: refusals } } }]),
  );

/** Who is changing something; a refusal where the device's name cannot be read. */
export function by(c: Context, { now }: ServerParts): By | Response {
  // A device that was let in goes by the name it was let in under.
  const savedBy = pairedDeviceOf(c)?.name ?? deviceName(c);
  return savedBy === null ? refuse(c, "device-name-unreadable", { limit: MAX_DEVICE_NAME }) : { savedBy, savedAt: now() };
}
