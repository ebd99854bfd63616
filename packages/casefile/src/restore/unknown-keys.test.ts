import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { designCase, designCaseWith } from "../design-case.test-support.js";
import { exampleCase, exampleNames } from "../example-cases.test-support.js";
import { nearest } from "../problems/index.js";
import { caseSchema } from "../schema/case-schema.js";
import { shapeOf } from "../schema/shape-of.js";
import { serialise } from "../serialise/serialise.js";
import { restore } from "./restore.js";
import { keptKeys } from "./unknown-keys.js";

type Objects = { readonly value: Record<string, unknown>; readonly known: readonly string[] };

/** Every object of a document that the schema knows, with the keys known there. */
function objectsOf(value: unknown, schema: Parameters<typeof shapeOf>[0]): readonly Objects[] {
  const shape = shapeOf(schema, value);
  if (shape.kind === "list") {
    return (value as readonly unknown[]).flatMap((item, k) => {
      const element = shape.element(k);
      return element ? objectsOf(item, element) : [];
    });
  }
  if (shape.kind === "leaf") return [];
  const object = value as Record<string, unknown>;
  const inner = Object.entries(object).flatMap(([key, item]) => {
    const schemaOfKey = shape.keys.get(key);
    return schemaOfKey ? objectsOf(item, schemaOfKey) : [];
  });
  return [{ value: object, known: [...shape.keys.keys()] }, ...inner];
}

/** Integer-like keys are moved to the front by every JavaScript object and so have no place of their own. */
const keyName = fc.string({ minLength: 1, maxLength: 30 }).filter((key) => !/^\d+$/.test(key));

test("an unknown key anywhere is kept where it stands, or refused with the key it resembles", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...exampleNames),
      fc.nat(),
      fc.nat(),
      keyName,
      fc.jsonValue({ maxDepth: 3 }),
      (name, which, where, key, value) => {
        const document = structuredClone(exampleCase(name));
        const objects = objectsOf(document, caseSchema);
        const target = objects[which % objects.length];
        if (!target || target.known.includes(key)) return;
        const entries = Object.entries(target.value);
        for (const [old] of entries) delete target.value[old];
        entries.splice(where % (entries.length + 1), 0, [key, value]);
        for (const [k, v] of entries)
          Object.defineProperty(target.value, k, { value: v, enumerable: true, writable: true, configurable: true });

        const text = `${JSON.stringify(document, null, 2)}\n`;
        const restored = restore(text);
        const suggestion = key.startsWith("x-") ? null : nearest(key, target.known);
        if (suggestion === null) {
          expect(restored.ok && serialise(restored.case)).toBe(text);
        } else {
          const problems = restored.ok ? [] : restored.problems;
          expect(problems.map(({ code, params }) => [code, params])).toEqual([["unknown-key-near", { key, suggestion }]]);
        }
      },
    ),
  );
});

describe("slips and own keys", () => {
  const problemsWith = (path: readonly (string | number)[], value: unknown) => {
    const restored = restore(designCaseWith(path, value));
    return restored.ok ? [] : restored.problems;
  };

  test("one letter out of place is a slip, named with what was meant", () => {
    expect(problemsWith(["drivelines", 0, "sections", 0, "phasignDeg"], 90)).toEqual([
      { code: "unknown-key-near", path: "drivelines[0].sections[0].phasignDeg", params: { key: "phasignDeg", suggestion: "phasingDeg" } },
    ]);
    expect(problemsWith(["limits", "equivalentMaxmumDeg"], 2)).toEqual([
      {
        code: "unknown-key-near",
        path: "limits.equivalentMaxmumDeg",
        params: { key: "equivalentMaxmumDeg", suggestion: "equivalentMaximumDeg" },
      },
    ]);
  });

  test("the keys looked at are those of the same object only", () => {
    expect(problemsWith(["vehicle", "lengthMn"], 1)).toEqual([]);
  });

  test("keys that are kept and read by nobody are listed, own ones are not", () => {
    const document = { ...designCase(), colour: "red", "x-mine": 1, vehicle: { ...designCase().vehicle, owner: { name: "n" } } };
    const restored = restore(document);
    expect(restored.ok && keptKeys(restored.case)).toEqual(["vehicle.owner", "colour"]);
    for (const name of exampleNames) expect(keptKeys(exampleCase(name)), name).toEqual([]);
  });

  test("x- keys are nobody's slip", () => {
    expect(problemsWith(["gauging", 0, "readings", 0, "x-at"], "here")).toEqual([]);
    expect(problemsWith(["x-id"], 1)).toEqual([]);
  });

  test("nothing is asked of the keys of open objects", () => {
    expect(restore({ ...designCase(), observations: [{ fil: "a.wav", files: 2 }] }).ok).toBe(true);
  });
});
