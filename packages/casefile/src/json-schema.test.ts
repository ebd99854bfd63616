import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { z } from "zod";
import { designCase, designCaseWith } from "./design-case.test-support.js";
import { exampleNames, exampleText } from "./example-cases.test-support.js";
import { caseJsonSchemaText } from "./json-schema.js";

const published = readFileSync(new URL("../../../docs/halfturn-case.schema.json", import.meta.url), "utf8");
const page = readFileSync(new URL("../../../docs/case-file.md", import.meta.url), "utf8");

test("the published schema is the one of the sources (npm run schema -w @halfturn/casefile writes it)", () => {
  expect(JSON.stringify(JSON.parse(published))).toBe(JSON.stringify(JSON.parse(caseJsonSchemaText())));
});

test("the published schema takes the examples and the outline, and refuses what is no case", () => {
  const schema = z.fromJSONSchema(JSON.parse(published));
  for (const name of exampleNames) expect(schema.safeParse(JSON.parse(exampleText(name))).success, name).toBe(true);
  expect(schema.safeParse(designCase()).success).toBe(true);
  expect(schema.safeParse(designCaseWith(["x-mine"], 1)).success).toBe(true);
  expect(schema.safeParse(designCaseWith(["gauging", 0, "readings", 0, "deg"], 91)).success).toBe(false);
  expect(schema.safeParse(designCaseWith(["drivelines", 0, "runs"], "sideways")).success).toBe(false);
});

/** Every key that the schema names, and every word it allows. */
function namesIn(schema: unknown): readonly string[] {
  if (Array.isArray(schema)) return schema.flatMap(namesIn);
  if (typeof schema !== "object" || schema === null) return [];
  return Object.entries(schema).flatMap(([key, value]: [string, unknown]) => {
    if (key === "properties") return [...Object.keys(value as object), ...Object.values(value as object).flatMap(namesIn)];
    if (key === "enum") return value as readonly string[];
    return key === "const" && typeof value === "string" ? [value] : namesIn(value);
  });
}

test("the page about the format explains every key and every word of the schema", () => {
  const unexplained = [...new Set(namesIn(JSON.parse(published)))].filter((name) => !page.includes(`\`${name}\``));
  expect(unexplained).toEqual([]);
});
