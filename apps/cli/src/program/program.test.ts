import { readFileSync } from "node:fs";
import { ExitCode } from "@stricli/core";
import { describe, expect, it } from "vitest";
import { colourWanted } from "./colour.js";
import { exitCodeOf } from "./exit-code.js";
import { afterLanguage, languageArgument, unitsArgument } from "./language-argument.js";
import { VERSION } from "./version.js";

describe("exit codes", () => {
  it("keep to 0, 1 and 2, and 70 for a fault of the program", () => {
    expect([0, 1, 2, 70].map(exitCodeOf)).toEqual([0, 1, 2, 70]);
    expect([ExitCode.UnknownCommand, ExitCode.InvalidArgument].map(exitCodeOf)).toEqual([2, 2]);
    expect([ExitCode.InternalError, ExitCode.CommandLoadError, ExitCode.ContextLoadError, undefined].map(exitCodeOf)).toEqual([
      70, 70, 70, 70,
    ]);
  });
});

describe("language", () => {
  it("is asked for by flag, then by the environment", () => {
    expect(languageArgument(["analyse", "--lang", "es"], { LC_ALL: "en_GB" })).toBe("es");
    expect(languageArgument(["analyse", "--lang=en"], { LANG: "es_ES" })).toBe("en");
    expect(languageArgument(["analyse"], { LANG: "es_ES.UTF-8" })).toBe("es");
    expect(languageArgument(["analyse"], { LC_ALL: "C", LANG: "es_ES.UTF-8" })).toBe("en");
    expect(languageArgument(["analyse", "--lang"], {})).toBe("en");
    expect(languageArgument(["analyse", "--", "--lang", "es"], {})).toBe("en");
  });
});

describe("units", () => {
  it("are metric unless others are asked for by flag", () => {
    expect([["plan"], ["plan", "--units"], ["plan", "--units", "imperial"], ["plan", "--", "--units", "us"]].map(unitsArgument)).toEqual(
      Array.from({ length: 4 }, () => "metric"),
    );
    expect(
      [
        ["plan", "--units", "us"],
        ["plan", "--units=us", "a.json"],
      ].map(unitsArgument),
    ).toEqual(["us", "us"]);
  });
});

describe("a language before the command", () => {
  it.each([
    [
      ["--lang", "es", "analyse", "a.json"],
      ["analyse", "a.json"],
    ],
    [["--lang=es", "--help"], ["--help"]],
    [
      ["--lang", "fr", "analyse", "a.json"],
      ["analyse", "--lang", "fr", "a.json"],
    ],
    [
      ["--lang=fr", "analyse", "a.json"],
      ["analyse", "--lang=fr", "a.json"],
    ],
    [["--lang", "es"], []],
    [
      ["analyse", "--lang", "es"],
      ["analyse", "--lang", "es"],
    ],
    [[], []],
  ])("%j reads as %j", (args, expected) => {
    expect(afterLanguage(args)).toEqual(expected);
  });
});

describe("colour", () => {
  it.each([
    [true, {}, true],
    [false, {}, false],
    [true, { TERM: "dumb" }, false],
    [true, { NO_COLOR: "1" }, false],
    [true, { NO_COLOR: "" }, true],
    [false, { FORCE_COLOR: "1" }, true],
    [true, { FORCE_COLOR: "0" }, false],
    [false, { FORCE_COLOR: "3", NO_COLOR: "1" }, false],
  ])("terminal %s with %j: %s", (terminal, env, wanted) => {
    expect(colourWanted(terminal, env)).toBe(wanted);
  });
});

describe("version", () => {
  it("is that of the package", () => {
    const manifest = JSON.parse(readFileSync(new URL("../../package.json", import.meta.url), "utf8"));
    expect(VERSION).toBe(manifest.version);
  });
});
