import { type Case, type CaseReading, serialise } from "@halfturn/casefile";
import fc from "fast-check";
import { expect, test } from "vitest";
import { anyEdits, sampleCase as base } from "./edits.test-support.js";
import { withGaugingNames } from "./gauging-names.js";
import { hasWholeItems, isWhole, itemKeys, unnumbered } from "./item-keys.js";
import { type MergeConflict, mergeCases, resolveConflict } from "./merge-cases.js";

/** A case as fields: each by its place (lists by what their items are) with its value as text. An item that is taken whole is a field of its own, and its value is how often it is there. */
function fieldsOf(value: unknown, name = "", place = ""): ReadonlyMap<string, string> {
  if (isWhole(name) || typeof value !== "object" || value === null) return new Map([[place, JSON.stringify(value)]]);
  if (Array.isArray(value) && hasWholeItems(name)) {
    const items = itemKeys(name, value).map((key, k) => `${place}/${unnumbered(key)}=${JSON.stringify(value[k])}`);
    return new Map(items.map((item) => [item, String(items.filter((other) => other === item).length)]));
  }
  return new Map(
    Array.isArray(value)
      ? itemKeys(name, value).flatMap((key, k) => [...fieldsOf(value[k], "", `${place}/${key}`)])
      : Object.entries(value).flatMap(([key, item]) => [...fieldsOf(item, key, `${place}/${key}`)]),
  );
}

const fields = (document: Case) => fieldsOf(withGaugingNames({ ...document, updatedAt: "" }));
const prefixOf = ({ place }: Pick<MergeConflict, "place">) =>
  place.map((step) => `/${"item" in step ? unnumbered(step.item) : step.key}`).join("");
const covers = (conflict: MergeConflict, place: string): boolean => {
  const prefix = prefixOf(conflict);
  return place.startsWith(prefix) && ["", "/", "="].includes(place.charAt(prefix.length));
};

/** Edits of one side that are neither in the merged case nor in a conflict. One of two alike that was taken out may be there again by an edit of the other side. */
function lostEdits(edited: Case, other: Case, { merged, conflicts }: ReturnType<typeof mergeCases>): readonly string[] {
  const [was, is, made, there] = [fields(base), fields(edited), fields(merged), fields(other)];
  return [...new Set([...was.keys(), ...is.keys()])].filter((place) => {
    if (was.get(place) === is.get(place) || made.get(place) === is.get(place)) return false;
    const alike = place.includes("/readings/") && (is.has(place) ? made.has(place) : there.get(place) !== was.get(place));
    return !alike && !conflicts.some((conflict) => covers(conflict, place));
  });
}

test("with one side unchanged, the other side is the result", () => {
  fc.assert(
    fc.property(anyEdits, (edited) => {
      expect(mergeCases(base, edited, base)).toEqual({ merged: edited, conflicts: [] });
      expect(mergeCases(base, base, edited)).toEqual({ merged: edited, conflicts: [] });
      expect(mergeCases(base, edited, JSON.parse(JSON.stringify(edited)) as Case)).toEqual({ merged: edited, conflicts: [] });
    }),
    { seed: 1 },
  );
});

test("no edit of either side is lost, unless it stands in a conflict", () => {
  fc.assert(
    fc.property(anyEdits, anyEdits, (mine, theirs) => {
      const result = mergeCases(base, mine, theirs);
      expect(lostEdits(mine, theirs, result)).toEqual([]);
      expect(lostEdits(theirs, mine, result)).toEqual([]);
    }),
    { seed: 1, numRuns: 500 },
  );
});

test("which side is called mine changes no more than the order of lists, and who is mine in a conflict", () => {
  const swapped = ({ mine, theirs, ...rest }: MergeConflict) => JSON.stringify([prefixOf(rest), theirs ?? null, mine ?? null]);
  const straight = (conflict: MergeConflict) => JSON.stringify([prefixOf(conflict), conflict.mine ?? null, conflict.theirs ?? null]);
  fc.assert(
    fc.property(anyEdits, anyEdits, (mine, theirs) => {
      const one = mergeCases(base, mine, theirs);
      const other = mergeCases(base, theirs, mine);
      expect(other.conflicts.map(swapped).sort()).toEqual(one.conflicts.map(straight).sort());
      if (one.conflicts.length > 0) return;
      expect(new Map([...fields(other.merged)].sort())).toEqual(new Map([...fields(one.merged)].sort()));
      expect(other.merged.updatedAt).toBe(one.merged.updatedAt);
    }),
    { seed: 1, numRuns: 500 },
  );
});

test("every choice in a conflict can be made, and gives the chosen value", () => {
  fc.assert(
    fc.property(anyEdits, anyEdits, (mine, theirs) => {
      const { merged, conflicts } = mergeCases(base, mine, theirs);
      const allTheirs = conflicts.reduce((document, conflict) => resolveConflict(document, conflict, conflict.theirs), merged);
      const there = fields(theirs);
      for (const [place, value] of fields(allTheirs)) {
        if (!place.includes("/readings/") && conflicts.some((conflict) => covers(conflict, place))) expect(value).toBe(there.get(place));
      }
    }),
    { seed: 1 },
  );
});

test("every correction stands on the gauging it stood on", () => {
  fc.assert(
    fc.property(anyEdits, anyEdits, (mine, theirs) => {
      const { merged } = mergeCases(base, mine, theirs);
      for (const { basis } of merged.corrections ?? []) for (const { gauging } of basis) expect(merged.gauging?.[gauging]).toBeDefined();
    }),
    { seed: 1 },
  );
});

const withReadings = (document: Case, change: (readings: readonly CaseReading[]) => readonly CaseReading[]): Case => ({
  ...document,
  gauging: (document.gauging ?? []).map((gauging) => ({ ...gauging, readings: change(gauging.readings) })),
});
const driven = (deg: number): CaseReading => ({ at: "driven", deg, lower: "driven-end", side: "left" });
const back = (deg: number): CaseReading => ({ at: "back", deg, lower: "driven-end", side: "left" });

test("two people read two shafts of one gauging, and both readings are there", () => {
  const { merged, conflicts } = mergeCases(
    base,
    withReadings(base, (readings) => [...readings, back(6)]),
    withReadings(base, (readings) => [...readings, driven(1.2)]),
  );
  expect(conflicts).toEqual([]);
  expect(merged.gauging?.[0]?.readings.slice(3)).toEqual(expect.arrayContaining([back(6), driven(1.2)]));
});

test("two readings of one place are no third: they are a conflict, whole", () => {
  const mine = withReadings(base, (readings) => [...readings, driven(1.2)]);
  const theirs = withReadings(base, (readings) => [...readings, { ...driven(1.4), lower: "source-end" }]);
  const { conflicts } = mergeCases(base, mine, theirs);
  expect(conflicts.map(({ path, mine: here, theirs: there }) => [path, here, there])).toEqual([
    ["gauging[0].readings[3]", driven(1.2), { ...driven(1.4), lower: "source-end" }],
  ]);
});

test("a reading taken out here and changed there stays until somebody chose", () => {
  const mine = withReadings(base, (readings) => readings.slice(1));
  const theirs = withReadings(base, ([first, ...rest]) => [{ ...(first as CaseReading), deg: 4 }, ...rest]);
  const { merged, conflicts } = mergeCases(base, mine, theirs);
  expect(merged.gauging?.[0]?.readings).toContainEqual({ ...base.gauging?.[0]?.readings[0], deg: 4 });
  const [conflict] = conflicts as [MergeConflict];
  expect(conflict.mine).toBeUndefined();
  expect(resolveConflict(merged, conflict, conflict.mine).gauging?.[0]?.readings).toHaveLength(2);
});

test("of two repeats, one taken out here and the other changed there, both edits stand", () => {
  const mine = withReadings(base, ([source, , second]) => [source as CaseReading, second as CaseReading]);
  const theirs = withReadings(base, ([source, first, second]) => [source, first, { ...(second as CaseReading), deg: 5 }] as CaseReading[]);
  const { merged, conflicts } = mergeCases(base, mine, theirs);
  expect(conflicts).toEqual([]);
  expect(merged.gauging?.[0]?.readings.map(({ deg }) => deg)).toEqual([2, 5]);
});

test("a driveline rebuilt in two ways is taken from one side, never mixed", () => {
  const rebuilt = (id: string): Case => ({
    ...base,
    drivelines: base.drivelines.map((driveline) => ({ ...driveline, sections: [{ id }], joints: driveline.joints.slice(0, 2) })),
  });
  const { merged, conflicts } = mergeCases(base, rebuilt("long"), rebuilt("short"));
  expect(conflicts.map(({ path }) => path)).toEqual(["drivelines[0]"]);
  expect(merged.drivelines).toEqual(rebuilt("long").drivelines);
});

test("a key named as a prototype's is a key like any other", () => {
  const mine = JSON.parse(serialise(base).replace("{", '{ "x-mine": { "__proto__": { "polluted": 1 } },')) as Case;
  const theirs = JSON.parse(serialise(base).replace("{", '{ "x-mine": { "__proto__": { "polluted": 2 } },')) as Case;
  const { merged, conflicts } = mergeCases(base, mine, theirs);
  expect(conflicts).toHaveLength(1);
  expect(Object.keys((merged as unknown as Record<string, object>)["x-mine"] as object)).toEqual(["__proto__"]);
  expect("polluted" in {}).toBe(false);
});
