import { caseJsonSchemaText } from "@halfturn/casefile";
import { expect, test } from "vitest";
import { fieldNames } from "./field-names.js";

interface Schema {
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly items?: Schema;
  readonly anyOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
}

/** Every key below a part of the case file. */
const keysOf = ({ properties = {}, items, anyOf = [], oneOf = [] }: Schema): readonly string[] => [
  ...Object.entries(properties).flatMap(([key, value]) => [key, ...keysOf(value)]),
  ...[...anyOf, ...oneOf, ...(items ? [items] : [])].flatMap(keysOf),
];

/** Never typed, and never a question between two devices. */
const WITHOUT_NAME: readonly string[] = ["id"];

test("whatever a case says of a vehicle, its complaint, its loads and its limits has a name in both languages", () => {
  const { properties = {} } = JSON.parse(caseJsonSchemaText()) as Schema;
  const parts = ["vehicle", "complaint", "drivelines", "limits", "states", "notes"].map((part) => [part, properties[part] ?? {}] as const);
  const keys = parts.flatMap(([part, schema]) => [part, ...keysOf(schema)]);
  expect(keys.length).toBeGreaterThan(80);
  for (const names of Object.values(fieldNames))
    expect(keys.filter((key) => !WITHOUT_NAME.includes(key) && !Object.hasOwn(names, key))).toEqual([]);
});
