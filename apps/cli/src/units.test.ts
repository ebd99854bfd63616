import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildProgram, type Program } from "./program.test-support.js";

let program: Program;
beforeAll(async () => {
  program = await buildProgram();
  program.example("two-piece", "case.json");
}, 60_000);
afterAll(() => program.remove());

const METRIC = /\d ?(?:mm|km\/h|m)(?![\p{L}\d/²])/gu;
const BESIDE = /\(-?[\d.,]+ mm\)/g;
/** What a person wrote stays as it was written. */
const TITLE = "Gritter 12: shudder pulling away, drone at 85 km/h";
const withoutBought = (text: string): string => text.replaceAll(/\s+/g, " ").replaceAll(TITLE, "").replaceAll(BESIDE, "");

const COMMANDS: readonly (readonly [name: string, args: readonly string[], shown: RegExp])[] = [
  [
    "orders",
    ["orders", "case.json", "--speed", "65mph"],
    /Turning at 65 mph.*lies outside the complaint, 49.7 to 55.9 mph.*Hz at 49.7 to 55.9 mph.*\d ft at this speed/,
  ],
  ["predict", ["predict", "case.json", "--draws", "500", "--change", "wedge=2deg", "--change", "bearing-drop=-6mm"], /0\.236 in \(6 mm\)/],
  ["plan", ["plan", "case.json", "--draws", "500", "--show", "1"], /\d in[ .,;]/],
];

describe("--units us", () => {
  it.each(COMMANDS)("%s prints inches, feet and miles an hour, and its JSON stays metric to the byte", async (_, args, shown) => {
    const us = await program.run([...args, "--units", "us"]);
    const metric = await program.run(args);
    expect([us.code, us.err, metric.code]).toEqual([0, "", 0]);
    expect(us.out.replaceAll(/\s+/g, " ")).toMatch(shown);
    expect(withoutBought(us.out).match(METRIC)).toBeNull();
    expect(metric.out.match(METRIC)).not.toBeNull();
    expect(await program.run([...args, "--units", "metric"])).toEqual(metric);
    const json = [...args, "--json"];
    expect(await program.run([...json, "--units=us"])).toEqual(await program.run(json));
  });

  it("prints the report in them, in both languages", async () => {
    for (const lang of ["en", "es"]) {
      const made = await program.run(["report", "case.json", "-o", `${lang}.html`, "--units", "us", "--draws", "500", "--lang", lang]);
      expect(made.code).toBe(0);
      const page = readFileSync(program.path(`${lang}.html`), "utf8");
      const [metric, us] = ["km/h", "\u00a0mph"].map((unit) => page.replaceAll(TITLE, "").includes(unit));
      expect([lang, metric, us]).toEqual([lang, false, true]);
    }
  });

  it("is refused where it is not known, with what to write", async () => {
    const { code, err } = await program.run(["orders", "case.json", "--speed", "105", "--units", "imperial"]);
    expect(code).toBe(2);
    expect(err).toContain('--units: "imperial" is not known; write metric or us');
  });
});
