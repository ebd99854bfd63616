import fc from "fast-check";
import { expect, test } from "vitest";
import { exampleCase, exampleNames } from "../example-cases.test-support.js";
import { LAYOUTS, newCase } from "../layout/new-case.js";
import { restore } from "../restore/restore.js";
import type { Case } from "../schema/case.js";
import { serialise } from "./serialise.js";

const restored = (text: string): Case => {
  const result = restore(text);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.case;
};

/** Cases that differ from one another in numbers, words and length. */
const someCase: fc.Arbitrary<Case> = fc
  .record({
    base: fc.oneof(
      fc.constantFrom(...exampleNames).map(exampleCase),
      fc.constantFrom(...LAYOUTS).map((layout) => newCase({ id: "c", title: "t", layout, createdAt: "2026-01-02" })),
    ),
    title: fc.string({ unit: "grapheme" }),
    axleRatio: fc.double({ min: 0.001, max: 100, noNaN: true }),
    degrees: fc.array(fc.double({ min: 0, max: 75, maxExcluded: true, noNaN: true }), { maxLength: 5 }),
    own: fc.jsonValue({ maxDepth: 2 }),
  })
  .map(({ base, title, axleRatio, degrees, own }) => ({
    ...base,
    title,
    vehicle: { ...base.vehicle, axleRatio },
    gauging: [
      ...(base.gauging ?? []),
      {
        driveline: "rear",
        stage: "after" as const,
        state: { rideHeight: "normal" as const, wheels: "on-ground" as const },
        gauge: { resolutionDeg: 0.1, accuracyDeg: 0.1 },
        readings: degrees.map((deg) => ({ at: "source", deg, lower: "source-end" as const, side: "right" as const })),
      },
    ],
    "x-own": own,
  }));

test("what is written is read back as it was, and written again to the same bytes", () => {
  fc.assert(
    fc.property(someCase, (document) => {
      const text = serialise(document);
      const again = restored(text);
      // JSON has no -0, so that is compared through its text.
      expect(again).toEqual(JSON.parse(JSON.stringify(document)));
      expect(serialise(again)).toBe(text);
      expect(serialise(again, again)).toBe(text);
    }),
  );
});

test("ends with one line feed", () => {
  expect(serialise(exampleCase("one-piece"))).toMatch(/[^\n]\n$/);
});

test("keys of the file stay in place, new ones follow in the order of the schema, whatever order they were added in", () => {
  const asRead = restored(
    '{"version": 1, "format": "halfturn-case", "x-first": 1, "id": "a", "createdAt": "2026-01-02", "title": "t", ' +
      '"drivelines": [{"joints": [{"kind": "cross", "id": "J1"}], "sections": [], "runs": "forward", "id": "front"}]}',
  );
  const [driveline] = asRead.drivelines;
  if (!driveline) throw new Error("a driveline was written above");
  const changed = { notes: "n", adjusters: [], states: [], ...asRead, "x-last": 2, vehicle: { cylinders: 4, label: "v" } };
  const longer = { axle: { steered: true, label: "a" }, label: "l", ...driveline };
  const text = serialise({ ...changed, drivelines: [longer] }, asRead);
  const written = JSON.parse(text) as { readonly vehicle: object; readonly drivelines: readonly { readonly axle: object }[] };
  expect(Object.keys(written)).toEqual([
    ...["version", "format", "x-first", "id", "createdAt", "title", "drivelines"],
    ...["vehicle", "states", "adjusters", "notes"],
    "x-last",
  ]);
  expect(Object.keys(written.vehicle)).toEqual(["label", "cylinders"]);
  expect(Object.keys(written.drivelines[0] ?? {})).toEqual(["joints", "sections", "runs", "id", "label", "axle"]);
  expect(Object.keys(written.drivelines[0]?.axle ?? {})).toEqual(["label", "steered"]);
});

test("an item that has moved in its list keeps its own key order", () => {
  const asRead = exampleCase("two-piece");
  const [first, ...rest] = asRead.adjusters ?? [];
  if (!first) throw new Error("the example has adjusters");
  const text = serialise({ ...asRead, adjusters: [...rest, first] }, asRead);
  const written = JSON.parse(text) as Case;
  expect(written.adjusters?.map((adjuster) => Object.keys(adjuster))).toEqual([...rest, first].map((adjuster) => Object.keys(adjuster)));
});
