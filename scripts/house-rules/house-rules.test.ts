import { describe, expect, it } from "vitest";
import { parse } from "./parse.mjs";
import { breachesOf } from "./rules.mjs";

const ENGINE = "packages/engine/src/kinematics/chain.ts";
const TEST = "packages/engine/src/kinematics/chain.test.ts";
const FIGURE = "packages/figures/src/side-view.ts";

/** `line rule` of every breach in one file. */
const found = (file: string, text: string) => breachesOf([parse(file, text)]).map(({ line, rule }) => `${line} ${rule}`);

// Joined here so that this file keeps the rules it tests.
const join = (...parts: readonly string[]) => parts.join("");

describe("house rules", () => {
  it.each([
    ["a long file", FIGURE, "export const a = 1;\n".repeat(401), ["401 file-length"]],
    ["a file of the greatest length", FIGURE, "export const a = 1;\n".repeat(400), []],
    ["a long data table", "packages/engine/src/limits/speed-table.ts", "export const a = 1;\n".repeat(401), []],
    ["a long catalogue of words", "packages/words/src/en/labels.ts", "export const a = 1;\n".repeat(401), []],
    ["a file name in camel case", "packages/figures/src/sideView.ts", "", ["1 file-name"]],
    ["folders three deep", "packages/engine/src/a/b/c/chain.ts", "", []],
    ["folders four deep", "packages/engine/src/a/b/c/d/chain.ts", "", ["1 folder-depth"]],
  ])("shape: %s", (_, file, text, expected) => {
    expect(found(file, text)).toEqual(expected);
  });

  it.each([
    ["a rounded comparison", "expect(x).toBeCloseTo(1);", ["1 to-be-close-to"]],
    ["a skipped test", 'it.skip("a", () => {});', ["1 test-not-run"]],
    ["the only test", '\ndescribe.only("a", () => {});', ["2 test-not-run"]],
    ["a planned test", 'test.todo("a");', ["1 test-not-run"]],
    ["a conditional table", 'it.skipIf(slow).each([1])("a", () => {});', ["1 test-not-run"]],
    ["an old spelling", 'xit("a", () => {});', ["1 test-not-run"]],
    ["a test of chance", "const x = Math.random();", ["1 test-random", "1 engine-purity"]],
    ["a mock that others may not see", 'vi.mock("./a.js");', ["1 mock-unseen"]],
    ["a mock on fresh ground", 'vi.hoisted(() => vi.resetModules()); vi.mock("./a.js");', []],
    ["a stream that skips", "reader.skip(4); lines.only(2);", []],
    ["an honest test", 'it.each([1])("a", () => { expect(1).toBe(1); });', []],
  ])("tests: %s", (_, text, expected) => {
    expect(found(TEST, text)).toEqual(expected);
  });

  it.each([
    ["degrees to radians", "const r = (deg * Math.PI) / 180;", ["1 degrees-outside-units"]],
    ["radians to degrees", "const d = (r * 180) / Math.PI;", ["1 degrees-outside-units"]],
    ["a factor alone", "const f = Math.PI / 180;", ["1 degrees-outside-units"]],
    ["the inverse factor", "const f = 180 / Math.PI;", ["1 degrees-outside-units"]],
    ["a factor in brackets", "const r = deg * (Math.PI / 180);", ["1 degrees-outside-units"]],
    ["a full turn", "const r = (2 * Math.PI * deg) / 360;", ["1 degrees-outside-units"]],
    ["a factor in figures", "const f = 57.29577951308232;", ["1 degrees-outside-units"]],
    ["revolutions per minute", "const w = (2 * Math.PI * rpm) / 60;", []],
    ["a share of a half turn", "const share = deg / 180;", []],
    ["an area", "const area = Math.PI * 180;", []],
  ])("degrees: %s", (_, text, expected) => {
    expect(found(FIGURE, text)).toEqual(expected);
  });

  it("lets the units convert", () => {
    expect(found("packages/engine/src/units/angle.ts", "const f = Math.PI / 180;")).toEqual([]);
  });

  it.each([
    ["the clock", "const now = Date.now();", ["1 engine-purity"]],
    ["chance", "const x = Math.random();", ["1 engine-purity"]],
    ["the environment", "const e = process.env.HOME;", ["1 engine-purity"]],
    ["the network", 'const page = fetch("x");', ["1 engine-purity"]],
    ["a key of that name", "const a = { process: 1 }; const b = a.process;", []],
    ["a word in a comment", "// no process, no fetch, no Date.now\nconst a = 1;", []],
  ])("purity: %s", (_, text, expected) => {
    expect(found(ENGINE, text)).toEqual(expected);
    expect(found("apps/cli/src/main.ts", text)).toEqual([]);
  });

  it.each([
    ["a bare throw", 'if (x) throw new Error("no");', ["1 bare-throw"]],
    ["a documented programmer error", '// Programmer error: the caller checked.\nthrow new Error("no");', []],
    ["a function that documents it", '/** Throws on a programmer error only. */\nexport function f() {\n  throw new Error("no");\n}', []],
  ])("failures: %s", (_, text, expected) => {
    expect(found(ENGINE, text)).toEqual(expected);
  });

  it.each([
    ["a function without words", "export function f() {}", ["1 doc-comment"]],
    ["an arrow without words", "const a = 1;\nexport const f = () => a;", ["2 doc-comment"]],
    ["a line comment", "// angle\nexport const f = () => 1;", ["2 doc-comment"]],
    ["a documented function", "/** Angle, rad. */\nexport function f() {}", []],
    ["a documented arrow", "/** Angle, rad. */\nexport const f = () => 1;", []],
    [
      "overloads",
      "/** Angle. */\nexport function f(a: 1): 1;\nexport function f(a: 2): 2;\nexport function f(a: number) { return a; }",
      [],
    ],
    ["a function of its own", "function f() {}", []],
    ["a constant", "export const a = 1;", []],
  ])("doc comments: %s", (_, text, expected) => {
    expect(found(ENGINE, text)).toEqual(expected);
  });

  it.each([
    ["a home folder", join("see /", "home/kim/cases"), ["1 machine-path"]],
    ["a scratch folder", join('open("/', 'tmp/x.json")'), ["1 machine-path"]],
    ["a Windows home", join("C:", "\\Users\\kim"), ["1 machine-path"]],
    ["an address on the web", join("https://example.org/", "home/kim"), []],
    ["a relative path", join("docs/", "work/notes.md"), []],
    ["a registry", join("https://registry", ".npmjs.org/zod"), ["1 registry-host"]],
    ["a host in the lock file", join('"resolved": "', 'https://example.org/zod.tgz"'), ["1 registry-host"]],
    ["a workspace in the lock file", '"resolved": "packages/engine"', []],
    ["a note to self", join("TO", "DO: later"), ["1 unfinished"]],
  ])("traces: %s", (_, text, expected) => {
    expect(found("docs/notes.md", text)).toEqual(expected);
  });

  it("names the file and the remedy", () => {
    expect(breachesOf([parse(FIGURE, "const f = Math.PI / 180;")])).toEqual([
      { file: FIGURE, line: 1, rule: "degrees-outside-units", remedy: expect.stringContaining("degreesToRadians") },
    ]);
  });
});
