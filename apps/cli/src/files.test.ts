import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { LAYOUTS, restore } from "@halfturn/casefile";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { NEW_LAYOUTS } from "./commands/new-command.js";
import { buildProgram, type Program } from "./program.test-support.js";

let program: Program;
beforeAll(async () => {
  program = await buildProgram();
  program.example("two-piece", "case.json");
}, 60_000);
afterAll(() => program.remove());

const read = (name: string): string => readFileSync(program.path(name), "utf8");

describe("new", () => {
  it("knows the layouts of the case file", () => {
    expect(NEW_LAYOUTS).toEqual(LAYOUTS);
  });

  it.each(LAYOUTS)("writes a valid case for %s", async (layout) => {
    const { code, err, out } = await program.run(["new", `${layout}.json`, "--layout", layout, "--title", "Yard van 7"]);
    expect([code, err]).toEqual([0, ""]);
    expect(out).toMatch(new RegExp(`^${layout}\\.json written\\.`));
    const restored = restore(read(`${layout}.json`));
    expect(restored.ok && restored.case.title).toBe("Yard van 7");
    const valid = await program.run(["validate", `${layout}.json`]);
    expect(valid.code).toBe(0);
    expect(valid.out).toMatch(/^\S+: valid\n/);
    expect(valid.out).toMatch(/Still lacking\n/);
    expect(valid.out).toMatch(/Nothing gauged/);
  });

  it("names keys that it keeps and does not read", async () => {
    program.broken("keys.json", (document) => Object.assign(document, { colour: "red", "x-mine": 1 }));
    const { code, out } = await program.run(["validate", "keys.json"]);
    expect(code).toBe(0);
    expect(out).toMatch(/Note: kept, but read by nothing here: colour\. Check the spelling/);
  });

  it("leaves an existing file alone, unless forced", async () => {
    writeFileSync(program.path("mine.json"), "mine");
    const args = ["new", "mine.json", "--layout", "one-piece", "--title", "x"];
    expect(await program.run(args)).toEqual({
      code: 2,
      out: "",
      err: "mine.json: is there already and was left alone; name another file, or add --force to overwrite it\n",
    });
    expect(read("mine.json")).toBe("mine");
    expect((await program.run([...args, "--force"])).code).toBe(0);
    expect(restore(read("mine.json")).ok).toBe(true);
    expect(readdirSync(program.folder).filter((name) => name.endsWith(".tmp"))).toEqual([]);
  });
});

describe("report", () => {
  it("writes HTML and PDF by the ending of the name", async () => {
    expect(await program.run(["report", "case.json", "-o", "r.html"])).toEqual({ code: 0, out: "r.html written.\n", err: "" });
    expect(read("r.html")).toMatch(/^<!doctype html>/i);
    expect((await program.run(["report", "case.json", "--output", "r.pdf", "--paper", "letter", "--lang", "es"])).code).toBe(0);
    expect(readFileSync(program.path("r.pdf")).subarray(0, 5).toString()).toBe("%PDF-");
  });

  it("writes nothing when there is nothing to report", async () => {
    await program.run(["new", "empty.json", "--layout", "one-piece", "--title", "x"]);
    const { code, err } = await program.run(["report", "empty.json", "-o", "none.pdf"]);
    expect(code).toBe(1);
    expect(err).toMatch(/^empty\.json: nothing can be answered/);
    expect(readdirSync(program.folder)).not.toContain("none.pdf");
  });

  it("says on one line when the output cannot be written", async () => {
    const { code, out, err } = await program.run(["report", "case.json", "-o", "no/where.html"]);
    expect([code, out, err]).toEqual([2, "", "no/where.html: the folder is not there; make it first or name another file\n"]);
  });
});
