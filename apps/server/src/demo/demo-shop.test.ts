import { analyseCase, type Case, restore, serialise } from "@halfturn/casefile";
import { describe, expect, test } from "vitest";
import { demoShop } from "./demo-shop.js";

const SETTINGS = { seed: 1, draws: 2000, accepted: [] };

const shop = await demoShop();
const called = (id: string): Case => {
  const found = shop.find((document) => document.id === id);
  if (found === undefined) throw new Error(`no demonstration case ${id}`);
  return found;
};
const verdictsOf = (id: string): readonly string[] =>
  analyseCase(called(id), {}, SETTINGS).flatMap(({ analysis }) => [
    ...analysis.joints.map(({ verdict }) => verdict),
    analysis.cancellation.verdict,
    analysis.motion.verdict,
  ]);

test("a dozen cases and more, each with an id of its own", () => {
  expect(shop.length).toBeGreaterThanOrEqual(12);
  expect(new Set(shop.map(({ id }) => id)).size).toBe(shop.length);
});

describe.each(shop.map((document) => [document.id, document] as const))("%s", (_, document) => {
  test("is a case like any other, and computes", () => {
    expect(restore(serialise(document))).toEqual({ ok: true, case: document });
    const analysed = analyseCase(document, {}, SETTINGS);
    expect(analysed).toHaveLength(document.drivelines.length);
    for (const { gauging, analysis } of analysed) {
      const known = analysis.shafts.filter(({ inclination }) => inclination !== null).length;
      expect(known > 0).toBe(gauging !== null);
    }
  });

  test("has a complaint and a vehicle to show in a list", () => {
    expect(document.vehicle?.label).toMatch(/Skerry/);
    expect(document.complaint?.speedKmh).toHaveLength(2);
  });
});

test("the shop shows every state that work can be in", () => {
  expect(called("skerry-post-0203").gauging).toEqual([]);
  expect(verdictsOf("skerry-rescue-0177")).toContain("over");
  expect(verdictsOf("skerry-quarry-0019")).toEqual(expect.arrayContaining(["over", "not-gauged"]));
  expect(new Set(verdictsOf("skerry-topografia-0064"))).toEqual(new Set(["within"]));
  expect(new Set(verdictsOf("skerry-transit-0110"))).toEqual(new Set(["withheld"]));
  expect(verdictsOf("skerry-works-0088")).toContain("uncertain");
  expect(verdictsOf("skerry-forestry-0058")).toContain("over");
  expect(called("skerry-water-0033").corrections?.[0]?.state).toBe("chosen");
  expect(called("skerry-water-0031").corrections?.[0]?.state).toBe("made");
});
