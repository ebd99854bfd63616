import { readdirSync, truncateSync, writeFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildProgram, type Program } from "./program.test-support.js";

let program: Program;
beforeAll(async () => {
  program = await buildProgram();
}, 60_000);
afterAll(() => program.remove());

/** Too large to be read into memory at all: an answer proves that only the size was looked at. */
const HUGE = 10_000_000_000_000;

// biome-ignore lint/suspicious/noExplicitAny: a case is changed into something that is none
type Change = (document: any) => void;

const reading =
  (change: Change): Change =>
  (document) =>
    change(document.gauging[0].readings[1]);

const BAD: readonly (readonly [what: string, make: (name: string) => void, line: RegExp])[] = [
  [
    "no JSON",
    (name) => writeFileSync(program.path(name), '{ "format": "halfturn-case",\n  "version": 1,, }'),
    /the file: not valid JSON from line 2, column 16; look there for a missing comma/,
  ],
  ["an empty file", (name) => writeFileSync(program.path(name), ""), /the file: nothing in it; make a case with "halfturn new"/],
  [
    "no text",
    (name) => writeFileSync(program.path(name), Uint8Array.of(0xff, 0xfe, 0)),
    /is not UTF-8 text; check that this is the case file/,
  ],
  [
    "another version",
    (name) => program.broken(name, (document) => Object.assign(document, { version: 9 })),
    /version: case version 9 is not known here; this program reads up to version 1, so update/,
  ],
  [
    "a letter for a number",
    (name) =>
      program.broken(
        name,
        reading((at) => Object.assign(at, { deg: "O.8" })),
      ),
    /gauging\[0\]\.readings\[1\]\.deg \(reading 2 of gauging 1\): has to be a number but is a text \(O\.8\); write a number/,
  ],
  [
    "91 degrees",
    (name) =>
      program.broken(
        name,
        reading((at) => Object.assign(at, { deg: 91 })),
      ),
    /gauging\[0\]\.readings\[1\]\.deg \(reading 2 of gauging 1\): is 91: so near to 90 the gauge sat on a face .* write "face": "square"/,
  ],
  [
    "no joints",
    (name) => program.broken(name, (document) => Object.assign(document.drivelines[0], { joints: [] })),
    /drivelines\[0\]\.joints \(driveline 1\): has 0 entries but has to have at least 1; add/,
  ],
  [
    "three sections with two joints",
    (name) =>
      program.broken(name, ({ drivelines: [driveline] }) => {
        driveline.sections.push({ id: "third" });
        driveline.joints.length = 2;
      }),
    /drivelines\[0\]\.sections \(driveline 1\): 3 sections, but the joints listed need 1 .*; add or remove/,
  ],
  [
    "a key spelled wrong",
    (name) =>
      program.broken(name, ({ gauging: [gauging] }) => {
        gauging.readngs = gauging.readings;
        delete gauging.readings;
      }),
    /gauging\[0\]\.readngs \(gauging 1\): key "readngs" is not known; did you mean "readings"\?/,
  ],
  [
    "a reading at a section that is not there",
    (name) =>
      program.broken(
        name,
        reading((at) => Object.assign(at, { at: "midle" })),
      ),
    /gauging\[0\]\.readings\[1\]\.at \(reading 2 of gauging 1\): there is no shaft "midle" on this driveline; write source, front/,
  ],
  [
    "a file of 50 MB",
    (name) => {
      writeFileSync(program.path(name), "");
      truncateSync(program.path(name), 50_000_000);
    },
    /the file: 50\.0 MB is more than a case may have \(20\.0 MB\); check/,
  ],
  [
    "a file beyond any memory",
    (name) => {
      writeFileSync(program.path(name), "");
      truncateSync(program.path(name), HUGE);
    },
    /the file: .* MB is more than a case may have/,
  ],
];

describe("bad input", () => {
  it.each(BAD)(
    "%s: one line with place and remedy, exit 2, nothing written",
    async (_, make, line) => {
      make("bad.json");
      const before = readdirSync(program.folder);
      for (const args of [
        ["analyse", "bad.json"],
        ["analyse", "--json", "bad.json"],
        ["validate", "bad.json"],
        ["predict", "bad.json", "--change", "wedge=1deg"],
        ["plan", "bad.json"],
        ["orders", "bad.json", "--speed", "80"],
        ["report", "bad.json", "-o", "bad.pdf"],
      ]) {
        const { code, out, err } = await program.run(args);
        expect([args[0], code, out]).toEqual([args[0], 2, ""]);
        expect(err).toMatch(line);
        expect(err).toMatch(/^bad\.json: [^\n]+\n$/);
      }
      expect(readdirSync(program.folder)).toEqual(before);
    },
    30_000,
  );

  it.each([
    ["a file that is not there", ["analyse", "nowhere.json"], /^nowhere\.json: there is no such file; check the name.*\n$/],
    ["a folder", ["analyse", "."], /^\.: is a folder; name a file\n$/],
    [
      "an output folder that is not there",
      ["new", "no/where.json", "--layout", "one-piece", "--title", "x"],
      /^no\/where\.json: the folder is not there/,
    ],
  ])("%s: one line, exit 2", async (_, args, line) => {
    const { code, out, err } = await program.run(args);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toMatch(line);
  });

  it("names every problem of a file, one line each", async () => {
    program.broken("two.json", ({ gauging: [{ readings }] }) => {
      readings[0].deg = 91;
      readings[1].side = "lefft";
    });
    const { code, err } = await program.run(["validate", "two.json"]);
    expect(code).toBe(2);
    expect(err.trimEnd().split("\n")).toEqual([
      "two.json: gauging[0].readings[0].deg (reading 1 of gauging 1): is 91, but a face across the shaft is read as degrees off plumb; write 1",
      'two.json: gauging[0].readings[1].side (reading 2 of gauging 1): "lefft" is not known here; most likely "left" is meant (allowed: left or right)',
    ]);
  });

  it("reads standard input and names it in a problem", async () => {
    const { code, err } = await program.run(["analyse", "-"], { stdin: "[]" });
    expect(code).toBe(2);
    expect(err).toMatch(/^standard input: the file: not a Halfturn case/);
  });
});
