import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildProgram, type Program } from "./program.test-support.js";

let program: Program;
beforeAll(async () => {
  program = await buildProgram();
  program.example("two-piece", "case.json");
}, 60_000);
afterAll(() => program.remove());

describe("wrong use", () => {
  it.each([
    ["a mistyped command", ["analize", "case.json"], 'There is no command "analize"; did you mean "analyse"?'],
    ["an unknown command", ["xyzzy"], 'There is no command "xyzzy"; halfturn --help lists all commands'],
    ["a mistyped flag", ["analyse", "--jsn", "case.json"], "There is no flag --jsn; did you mean --json?"],
    ["an unknown short flag", ["analyse", "-q", "case.json"], "There is no short flag -q; --help lists all flags"],
    ["a wrong choice", ["analyse", "case.json", "--stage", "aftr"], '--stage: "aftr" is not known; write as-found or after'],
    [
      "a letter for a number",
      ["analyse", "case.json", "--seed", "x"],
      '--seed: "x" is not a whole number from 0 to 4,294,967,295; write one',
    ],
    ["too few draws", ["analyse", "case.json", "--draws", "9"], '--draws: "9" is not a whole number from 100 to 1,000,000; write one'],
    [
      "a gauging that is not there",
      ["analyse", "case.json", "--gauging", "9"],
      "--gauging: there is no gauging 9; write a number from 0 to 0",
    ],
    [
      "a stage that the gauging is not of",
      ["analyse", "case.json", "--gauging", "0", "--stage", "after"],
      '--gauging 0 is of stage "as-found", not "after"; leave out --stage or name another gauging',
    ],
    [
      "a mistyped finding",
      ["analyse", "case.json", "--accept", "gauging.wheel-hanging"],
      '--accept: "gauging.wheel-hanging" is not the code of a finding; did you mean gauging.wheels-hanging?',
    ],
    ["no file", ["analyse"], "FILE is missing; add it after the command"],
    [
      "two files",
      ["analyse", "case.json", "b"],
      '"b" is one argument too many (1 expected); remove it, or put quotes round a name with spaces',
    ],
    ["a flag without its value", ["report", "case.json", "-o"], "--output needs a value: write --output VALUE"],
    ["no output", ["report", "case.json"], "--output needs a value: write --output VALUE"],
    [
      "an output of unknown kind",
      ["report", "case.json", "-o", "r.doc"],
      '--output: "r.doc" does not say which kind to write; let the name end in .pdf or .html',
    ],
    ["a flag given twice", ["analyse", "case.json", "--seed", "1", "--seed", "2"], "--seed is given more than once; give it once"],
    ["an unknown language", ["analyse", "case.json", "--lang", "fr"], '--lang: "fr" is not known; write en or es'],
  ])("%s: one line, exit 2", async (_, args, line) => {
    expect(await program.run(args)).toEqual({ code: 2, out: "", err: `${line}\n` });
  });

  it("speaks the language asked for, or that of the environment", async () => {
    const line = 'No existe la orden "analize"; ¿quiso decir "analyse"?\n';
    expect((await program.run(["analize", "--lang", "es"])).err).toBe(line);
    expect((await program.run(["--lang", "es", "analize"])).err).toBe(line);
    expect((await program.run(["--lang=fr", "analyse", "case.json"])).err).toBe('--lang: "fr" is not known; write en or es\n');
    expect((await program.run(["analize"], { env: { LC_ALL: "es_ES.UTF-8" } })).err).toBe(line);
  });
});

const COMMANDS = [
  "new",
  "validate",
  "analyse",
  "predict",
  "plan",
  "orders",
  "listen",
  "convert",
  "report",
  "serve",
  "backup",
  "restore",
  "completion",
];

describe("help", () => {
  it.each([["--help"], ["-h"], []].map((args) => [args]))("%j prints every command and exits 0", async (args) => {
    const { code, out, err } = await program.run(args);
    expect([code, err]).toEqual([0, ""]);
    for (const command of COMMANDS) expect(out).toMatch(new RegExp(`^  ${command} +\\S`, "m"));
    expect(out).not.toMatch(/propose/);
  });

  it.each(COMMANDS)("%s --help explains flags and exit codes", async (command) => {
    const { code, out, err } = await program.run([command, "--help"]);
    expect([code, err]).toEqual([0, ""]);
    expect(out).toMatch(new RegExp(`^USAGE\n  halfturn ${command}`));
    if (["validate", "analyse", "predict", "plan", "orders", "listen", "convert", "report"].includes(command))
      expect(out).toMatch(/Exit 0: /);
  });

  it("prints its version", async () => {
    expect(await program.run(["--version"])).toEqual({ code: 0, out: "0.1.0\n", err: "" });
  });

  it("proposes commands, flags and values to the shell", async () => {
    const propose = async (line: string) =>
      (await program.run(["completion", "propose", "--", ...line.trim().split(" ")], { env: { COMP_LINE: line } })).out.trim().split("\n");
    expect(await propose("halfturn ana")).toEqual(["analyse"]);
    expect(await propose("halfturn analyse --st")).toEqual(["--stage", "--strict"]);
    expect(await propose("halfturn new --layout ")).toEqual(["one-piece", "two-piece", "three-piece", "four-wheel-drive"]);
    expect(await propose("halfturn analyse --accept gauging.w")).toEqual(["gauging.wheels-hanging", "gauging.wrong-side-of-level"]);
  });
});
