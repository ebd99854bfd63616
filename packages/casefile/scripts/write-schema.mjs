import { writeFileSync } from "node:fs";
import { caseJsonSchemaText } from "../dist/index.js";

// The published schema is never written by hand; a test compares it with what the sources give.
writeFileSync(new URL("../../../docs/halfturn-case.schema.json", import.meta.url), caseJsonSchemaText());
