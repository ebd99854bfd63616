import { z } from "zod";
import { caseSchema } from "./schema/case-schema.js";

/**
 * The published JSON Schema (draft 2020-12) of a case file, as text.
 * Unknown keys are allowed, as they are in files; what the parts of a case say about one another lies beyond a JSON Schema and is checked by `restore` alone.
 */
export function caseJsonSchemaText(): string {
  const { $schema, ...rest } = z.toJSONSchema(caseSchema, { io: "input", target: "draft-2020-12" });
  return `${JSON.stringify({ $schema, title: "Halfturn case file, version 1", ...rest }, null, 2)}\n`;
}
