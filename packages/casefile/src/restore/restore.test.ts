import { describe, expect, test } from "vitest";
import { designCase, designCaseWith } from "../design-case.test-support.js";
import type { Problem } from "../problems/index.js";
import { restore } from "./restore.js";

const problemsOf = (input: unknown): readonly Problem[] => {
  const restored = restore(input);
  return restored.ok ? [] : restored.problems;
};
const problemAt = (path: readonly (string | number)[], value: unknown) => problemsOf(designCaseWith(path, value));

test("the outline of the format is a case, and comes back as it is", () => {
  const restored = restore(designCase());
  expect(restored).toEqual({ ok: true, case: designCase() });
});

describe("what is no case at all", () => {
  const refused = (input: unknown) => problemsOf(input).map(({ code, path, params }) => [code, path, params]);

  test("JSON faults carry line and column", () => {
    expect(refused('{\n  "a": 1,\n  "b" 2\n}')).toEqual([["not-json", "", { line: 3, column: 7 }]]);
    expect(refused('{"a": [1, 2,]}')).toEqual([["not-json", "", { line: 1, column: 13 }]]);
    expect(refused('{\r\n"deg": 1,8}')).toEqual([["not-json", "", { line: 2, column: 10 }]]);
    expect(refused('{"a":\n "b\tc"}')).toEqual([["not-json", "", { line: 2, column: 4 }]]);
  });

  test("a file with nothing in it says just that", () => {
    for (const nothing of ["", " \n\t", "\uFEFF"]) expect(refused(nothing)).toEqual([["empty-file", "", {}]]);
  });

  test("other values and other formats", () => {
    const expected = "halfturn-case";
    expect(refused("[]")).toEqual([["not-a-case", "", { expected, got: "array" }]]);
    expect(refused("null")).toEqual([["not-a-case", "", { expected, got: "null" }]]);
    expect(refused(undefined)).toEqual([["not-a-case", "", { expected, got: "undefined" }]]);
    expect(refused({})).toEqual([["not-a-case", "format", { expected, got: "null" }]]);
    expect(refused({ format: "halfturn-analysis" })).toEqual([["not-a-case", "format", { expected, got: "halfturn-analysis" }]]);
    const circular: Record<string, unknown> = {};
    circular.self = circular;
    expect(refused(circular)).toEqual([["not-a-case", "", { expected, got: "object" }]]);
  });

  test("versions", () => {
    const version = (value: unknown) => refused({ format: "halfturn-case", version: value });
    expect(version(2)).toEqual([["wrong-version", "version", { got: 2, newest: 1 }]]);
    expect(version(0)).toEqual([["wrong-version", "version", { got: 0, newest: 1 }]]);
    expect(version(1.5)).toEqual([["wrong-version", "version", { got: 1.5, newest: 1 }]]);
    expect(version("1")).toEqual([["wrong-type", "version", { expected: "whole-number", got: "string", value: "1" }]]);
    expect(refused({ format: "halfturn-case" })).toEqual([["missing", "version", { key: "version" }]]);
  });

  test("a file of 50 MB is refused before it is parsed", () => {
    const text = `{"format": ${" ".repeat(50_000_000)}`;
    expect(refused(text)).toEqual([["too-large", "", { of: "bytes", got: text.length, limit: 20_000_000 }]]);
  });

  test("nesting without end is refused; brackets inside a text are not nesting", () => {
    expect(refused("[".repeat(1_000_000))).toEqual([["too-large", "", { of: "levels", got: 65, limit: 64 }]]);
    expect(restore({ ...designCase(), notes: '\\"[['.repeat(100) }).ok).toBe(true);
  });

  test("a byte order mark is no fault", () => {
    expect(restore(`\uFEFF${JSON.stringify(designCase())}`).ok).toBe(true);
  });
});

describe("one fault, one problem, named by its place", () => {
  const reading = (index: number, key: string) => ["gauging", 0, "readings", index, key] as const;
  const ends = ["driven-end", "source-end"];
  const places = ["source", "front", "front:source-end", "front:driven-end", "back", "back:source-end", "back:driven-end", "driven"];
  const rows: readonly (readonly [path: readonly (string | number)[], value: unknown, code: string, at: string, params: unknown])[] = [
    [["id"], undefined, "missing", "id", { key: "id" }],
    [["createdAt"], "yesterday", "wrong-form", "createdAt", { expected: "date", got: "yesterday" }],
    [["vehicle", "axleRatio"], "3,73", "wrong-type", "vehicle.axleRatio", { expected: "number", got: "string", value: "3,73" }],
    [["vehicle", "cylinders"], 5.5, "wrong-type", "vehicle.cylinders", { expected: "whole-number", got: "number", value: "5.5" }],
    [["vehicle", "tyre"], {}, "missing", "vehicle.tyre.size", { key: "size" }],
    [
      ["vehicle", "tyre"],
      { rollingCircumferenceMm: -1 },
      "out-of-range",
      "vehicle.tyre.rollingCircumferenceMm",
      { of: "number", got: -1, above: 0 },
    ],
    [
      ["complaint", "speedKmh"],
      [115, 90],
      "contradiction",
      "complaint.speedKmh[1]",
      { key: "speedKmh[1]", relation: "at-least", other: "speedKmh[0]", got: 90, limit: 115 },
    ],
    [["complaint", "speedKmh"], [115], "out-of-range", "complaint.speedKmh", { of: "list", got: 1, minimum: 2 }],
    [["complaint", "gear"], "6", "unknown-reference", "complaint.gear", { of: "gear", got: "6", allowed: ["5"] }],
    [["drivelines"], [], "out-of-range", "drivelines", { of: "list", got: 0, minimum: 1 }],
    [
      ["drivelines", 0, "runs"],
      "rearwards",
      "not-allowed",
      "drivelines[0].runs",
      { got: "rearwards", allowed: ["rearward", "forward"], suggestion: "rearward" },
    ],
    [["drivelines", 0, "sections", 1, "id"], "Back", "wrong-form", "drivelines[0].sections[1].id", { expected: "id", got: "Back" }],
    [
      ["drivelines", 0, "sections", 1, "lengthMm"],
      "1180",
      "wrong-type",
      "drivelines[0].sections[1].lengthMm",
      { expected: "number", got: "string", value: "1180" },
    ],
    [
      ["drivelines", 0, "sections", 0, "tube", "wallMm"],
      40,
      "contradiction",
      "drivelines[0].sections[0].tube.wallMm",
      { key: "wallMm", relation: "less-than", other: "outerDiameterMm / 2", got: 40, limit: 38.1 },
    ],
    [
      ["drivelines", 0, "joints", 2, "kind"],
      undefined,
      "missing",
      "drivelines[0].joints[2].kind",
      { key: "kind", allowed: ["cross", "double-cross", "ball", "flexible"] },
    ],
    [
      ["drivelines", 0, "joints", 2, "id"],
      "J1",
      "duplicate-id",
      "drivelines[0].joints[2].id",
      { id: "J1", first: "drivelines[0].joints[0].id" },
    ],
    [["drivelines", 0, "joints", 2], null, "wrong-type", "drivelines[0].joints[2]", { expected: "object", got: "null", value: "null" }],
    [
      ["drivelines", 0, "joints", 0, "centring"],
      { crossesApartMm: 60, ballFromCrossMm: 30, ballFixedTo: "driven-side" },
      "key-not-here",
      "drivelines[0].joints[0].centring",
      { key: "centring" },
    ],
    [
      ["drivelines", 0, "joints"],
      [{ id: "J1", kind: "cross" }],
      "count-mismatch",
      "drivelines[0].sections",
      { of: "sections", expected: 0, got: 2 },
    ],
    [
      ["limits"],
      { doubleCrossMinimumDeg: 4, doubleCrossMaximumDeg: 3 },
      "contradiction",
      "limits.doubleCrossMaximumDeg",
      { key: "doubleCrossMaximumDeg", relation: "at-least", other: "doubleCrossMinimumDeg", got: 3, limit: 4 },
    ],
    [
      ["limits"],
      { benchMetDeg: 1, benchAcceptedDeg: 0.5 },
      "contradiction",
      "limits.benchAcceptedDeg",
      { key: "benchAcceptedDeg", relation: "at-least", other: "benchMetDeg", got: 0.5, limit: 1 },
    ],
    [["states", 1, "id"], "normal", "duplicate-id", "states[1].id", { id: "normal", first: "states[0].id" }],
    [
      ["states", 1, "driveline"],
      "raer",
      "unknown-reference",
      "states[1].driveline",
      { of: "driveline", got: "raer", allowed: ["rear"], suggestion: "rear" },
    ],
    [
      ["gauging", 0, "driveline"],
      "front",
      "unknown-reference",
      "gauging[0].driveline",
      { of: "driveline", got: "front", allowed: ["rear"] },
    ],
    [
      ["gauging", 0, "gauge", "zeroCheck"],
      [{ deg: 0 }],
      "count-mismatch",
      "gauging[0].gauge.zeroCheck",
      { of: "zero-check", expected: 2, got: 1 },
    ],
    [reading(0, "deg"), 120, "out-of-range", "gauging[0].readings[0].deg", { of: "number", got: 120, below: 90 }],
    // The display of a gauge on a face across the shaft.
    [reading(0, "deg"), 91, "face-reading", "gauging[0].readings[0].deg", { got: 91, offPlumb: 1, marked: false }],
    [reading(0, "deg"), 89.4, "face-reading", "gauging[0].readings[0].deg", { got: 89.4, offPlumb: 0.6, marked: false }],
    [reading(4, "deg"), 89.4, "face-reading", "gauging[0].readings[4].deg", { got: 89.4, offPlumb: 0.6, marked: true }],
    // Metres where millimetres belong.
    [["drivelines", 0, "sections", 1, "lengthMm"], 1.35, "length-unit", "drivelines[0].sections[1].lengthMm", { got: 1.35, meant: 1350 }],
    [
      ["vehicle", "tyre"],
      { rollingCircumferenceMm: 2.42 },
      "length-unit",
      "vehicle.tyre.rollingCircumferenceMm",
      { got: 2.42, meant: 2420 },
    ],
    [
      ["complaint", "speedKmh"],
      95,
      "wrong-type",
      "complaint.speedKmh",
      { expected: "array", got: "number", value: "95", example: "[85, 110]" },
    ],
    // One limit of a pair against the other, which is built in.
    [
      ["limits"],
      { drivenAccelerationOverRadS2: 250 },
      "contradiction",
      "limits.drivenAccelerationOverRadS2",
      {
        key: "drivenAccelerationOverRadS2",
        relation: "at-least",
        other: "drivenAccelerationWarnRadS2",
        got: 250,
        limit: 300,
        builtIn: true,
      },
    ],
    [
      ["limits"],
      { flexibleMinimumDeg: 4 },
      "contradiction",
      "limits.flexibleMinimumDeg",
      { key: "flexibleMinimumDeg", relation: "at-most", other: "flexibleMaximumDeg", got: 4, limit: 3, builtIn: true },
    ],
    [reading(0, "deg"), -1.8, "out-of-range", "gauging[0].readings[0].deg", { of: "number", got: -1.8, minimum: 0 }],
    [reading(0, "lower"), undefined, "missing", "gauging[0].readings[0].lower", { key: "lower", allowed: ends }],
    [reading(0, "side"), undefined, "missing", "gauging[0].readings[0].side", { key: "side", allowed: ["left", "right"] }],
    [reading(0, "topLeans"), "driven-end", "key-not-here", "gauging[0].readings[0].topLeans", { key: "topLeans" }],
    [
      reading(1, "at"),
      "front:sourceend",
      "unknown-shaft",
      "gauging[0].readings[1].at",
      { got: "front:sourceend", allowed: places, suggestion: "front:source-end" },
    ],
    [reading(1, "at"), "source:driven-end", "unknown-shaft", "gauging[0].readings[1].at", { got: "source:driven-end", allowed: places }],
    [reading(4, "face"), undefined, "missing", "gauging[0].readings[4].face", { key: "face", allowed: ["square"] }],
    [reading(4, "topLeans"), undefined, "missing", "gauging[0].readings[4].topLeans", { key: "topLeans", allowed: ends }],
    [reading(4, "lower"), "driven-end", "key-not-here", "gauging[0].readings[4].lower", { key: "lower" }],
    [reading(5, "between"), ["front", "front:driven-end"], "same-shaft", "gauging[0].readings[5].between", { shaft: "front" }],
    [reading(5, "between"), ["source", "middle"], "unknown-shaft", "gauging[0].readings[5].between[1]", { got: "middle", allowed: places }],
    [
      ["gauging", 0, "headings", 0],
      { of: "back", lateralMm: 1, toward: "left" },
      "missing",
      "gauging[0].headings[0].overMm",
      { key: "overMm" },
    ],
    [
      ["gauging", 0, "headings", 0],
      { of: "front", lateralMm: 1 },
      "missing",
      "gauging[0].headings[0].toward",
      { key: "toward", allowed: ["left", "right"] },
    ],
    [
      ["gauging", 0, "headings", 0],
      { of: "front", deg: 1, toward: "left", overMm: 5 },
      "key-not-here",
      "gauging[0].headings[0].overMm",
      { key: "overMm" },
    ],
    [
      ["gauging", 0, "headings", 0],
      { of: "front", lateralMm: 1180, toward: "left" },
      "contradiction",
      "gauging[0].headings[0].lateralMm",
      { key: "lateralMm", relation: "less-than", other: "lengthMm", got: 1180, limit: 1180 },
    ],
    [
      ["adjusters"],
      [{ id: "w", kind: "axle-wedge", driveline: "rear", stock: { minDeg: 2, maxDeg: 1, stepDeg: 1 } }],
      "contradiction",
      "adjusters[0].stock.maxDeg",
      { key: "maxDeg", relation: "at-least", other: "minDeg", got: 1, limit: 2 },
    ],
    [
      ["adjusters"],
      [{ id: "d", kind: "support-drop", driveline: "rear", joint: "J4", stock: { sizesMm: [3] } }],
      "unknown-reference",
      "adjusters[0].joint",
      { of: "joint", got: "J4", allowed: ["J1", "J2", "J3"], suggestion: "J1" },
    ],
    [
      ["adjusters"],
      [{ id: "r", kind: "rephase", driveline: "rear", section: "middle", splineTeeth: 16 }],
      "unknown-reference",
      "adjusters[0].section",
      { of: "section", got: "middle", allowed: ["front", "back"] },
    ],
    [
      ["acceptedFindings"],
      [{ code: "wheels hanging", at: "2026-01-02" }],
      "wrong-form",
      "acceptedFindings[0].code",
      { expected: "finding-code", got: "wheels hanging" },
    ],
  ];

  test.each(rows)("%j = %j is %s at %s", (path, value, code, at, params) => {
    expect(problemAt(path, value)).toEqual([{ code, path: at, params }]);
  });

  const withSecondSection = (id: string) => {
    const document = designCase();
    const second = document.drivelines[0]?.sections[1];
    if (second) second.id = id;
    return { ...document, gauging: [] };
  };

  test("an id that a section before has already", () => {
    expect(problemsOf(withSecondSection("front"))).toEqual([
      { code: "duplicate-id", path: "drivelines[0].sections[1].id", params: { id: "front", first: "drivelines[0].sections[0].id" } },
    ]);
  });

  test("an id that the shafts at the ends have already", () => {
    expect(problemsOf(withSecondSection("driven"))).toEqual([
      { code: "reserved-id", path: "drivelines[0].sections[1].id", params: { id: "driven" } },
    ]);
  });

  test("an accessory named as another one, or as a part that every vehicle has", () => {
    const accessories = [
      { id: "fan", ratio: 1.2 },
      { id: "engine", ratio: 1 },
      { id: "fan", ratio: 2 },
    ];
    expect(problemsOf(designCaseWith(["vehicle", "accessories"], accessories))).toEqual([
      { code: "reserved-id", path: "vehicle.accessories[1].id", params: { id: "engine", of: "accessory" } },
      { code: "duplicate-id", path: "vehicle.accessories[2].id", params: { id: "fan", first: "vehicle.accessories[0].id" } },
    ]);
    expect(problemsOf(designCaseWith(["vehicle", "slipShare"], 1)).map(({ path }) => path)).toEqual(["vehicle.slipShare"]);
  });

  test("a display of nought needs no word for its direction", () => {
    const readings = [
      { at: "source", deg: 0, side: "left" },
      { at: "driven", face: "square", deg: 0, side: "left" },
    ];
    const headings = [
      { of: "front", lateralMm: 0 },
      { of: "back", deg: 0 },
    ];
    const [gauging] = designCase().gauging;
    expect(restore({ ...designCase(), gauging: [{ ...gauging, readings, headings }] }).ok).toBe(true);
  });
});

const without = (document: unknown, key: string) => Object.fromEntries(Object.entries(document as object).filter(([k]) => k !== key));

test("problems come in the order of the file, the missing ones at the end of their object", () => {
  const document = designCaseWith(["gauging", 0, "readings", 0], { side: "up", at: 4 });
  const problems = problemsOf({ adjusters: 1, ...without(document, "adjusters"), vehicel: 2 });
  expect(problems.map(({ path }) => path)).toEqual([
    "adjusters",
    "gauging[0].readings[0].side",
    "gauging[0].readings[0].at",
    "gauging[0].readings[0].deg",
    "vehicel",
  ]);
});

test("a key that is missing only because it is spelled wrong is said once", () => {
  const { gauging, ...rest } = designCase();
  const [{ readings, ...first }] = gauging as unknown as readonly [{ readings: unknown }];
  expect(problemsOf({ ...rest, gauging: [{ ...first, readngs: readings }] }).map(({ code, path }) => [code, path])).toEqual([
    ["unknown-key-near", "gauging[0].readngs"],
  ]);
  // What is missing besides is said still.
  const { deg: _deg, ...reading } = { ...(readings as readonly { deg: number }[])[0] };
  expect(
    problemsOf({ ...rest, gauging: [{ ...first, readings: [{ ...reading, sid: "left", side: undefined }] }] }).map(({ path }) => path),
  ).toEqual(["gauging[0].readings[0].sid", "gauging[0].readings[0].deg"]);
});

test("a difference near a right angle is no face reading, nor is a steep shaft", () => {
  expect(problemAt(["gauging", 0, "readings", 5, "deg"], 89)).toEqual([]);
  expect(problemAt(["gauging", 0, "readings", 0, "deg"], 60)).toEqual([]);
});

test("both limits of a pair changed together may leave the built-in ones behind", () => {
  expect(problemAt(["limits"], { drivenAccelerationOverRadS2: 250, drivenAccelerationWarnRadS2: 200 })).toEqual([]);
  expect(problemAt(["limits"], { drivenAccelerationWarnRadS2: 350 })).toEqual([]);
});

test("no sentence of the validator leaks: params are numbers, single words, keys or what the file says", () => {
  const text = JSON.stringify(problemsOf({ ...designCase(), drivelines: [4, {}, { id: 3, joints: {} }], states: "x", limits: [] }));
  expect(text).toContain('"missing"');
  expect(text).not.toMatch(/invalid|expected (a|an|string|number)|received|too (small|big)/i);
});
