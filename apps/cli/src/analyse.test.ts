import { readdirSync, readFileSync } from "node:fs";
import { restore } from "@halfturn/casefile";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildProgram, type Program } from "./program.test-support.js";

let program: Program;
beforeAll(async () => {
  program = await buildProgram();
  program.example("two-piece", "case.json");
  program.example("one-piece", "staged.json");
  program.broken("hanging.json", ({ gauging: [gauging] }) => Object.assign(gauging.state, { wheels: "hanging" }));
  program.broken("ungauged.json", (document) => Object.assign(document, { gauging: [] }));
  program.broken("over.json", ({ gauging: [gauging] }) => Object.assign(gauging.readings.at(-1), { deg: 30 }));
}, 60_000);
afterAll(() => program.remove());

const read = (name: string): string => readFileSync(program.path(name), "utf8");

describe("analyse --json", () => {
  it("prints the contract and nothing else, the same bytes each time", async () => {
    const first = await program.run(["analyse", "case.json", "--json"]);
    expect([first.code, first.err]).toEqual([0, ""]);
    const json = JSON.parse(first.out);
    expect(json).toMatchObject({ format: "halfturn-analysis", version: 1, seed: 1 });
    expect(json.drivelines[0]).toMatchObject({ id: "rear", stage: "as-found", gauging: 0 });
    expect(json.drivelines[0].shafts.map(({ id }: { id: string }) => id)).toEqual(["source", "front", "back", "driven"]);
    expect((await program.run(["analyse", "case.json", "--json"])).out).toBe(first.out);
    const spanish = await program.run(["analyse", "case.json", "--json", "--lang", "es"], { env: { FORCE_COLOR: "1" } });
    expect(spanish.out).toBe(first.out);
  });

  it("carries seed and draws through", async () => {
    const one = JSON.parse((await program.run(["analyse", "case.json", "--json", "--draws", "500"])).out);
    const other = JSON.parse((await program.run(["analyse", "case.json", "--json", "--draws", "500", "--seed", "7"])).out);
    const angle = ({ drivelines }: typeof one) => drivelines[0].joints[0].operatingAngleDeg;
    expect(other.seed).toBe(7);
    expect(angle(other).value).toBe(angle(one).value);
    expect(angle(other).interval95).not.toEqual(angle(one).interval95);
  });

  it("reads standard input", async () => {
    const file = await program.run(["analyse", "case.json", "--json"]);
    expect(await program.run(["analyse", "-", "--json"], { stdin: read("case.json") })).toEqual(file);
  });

  it("takes the latest stage unless told otherwise", async () => {
    const stage = async (...flags: string[]) =>
      JSON.parse((await program.run(["analyse", "staged.json", "--json", ...flags])).out).drivelines[0].stage;
    expect(await stage()).toBe("after");
    expect(await stage("--stage", "as-found")).toBe("as-found");
    expect(await stage("--gauging", "0")).toBe("as-found");
  });
});

describe("analyse for people", () => {
  it("shows every part in 80 columns, without colour when it is not a terminal", async () => {
    const { code, out, err } = await program.run(["analyse", "case.json"]);
    expect([code, err]).toEqual([0, ""]);
    for (const part of ["Shafts", "Joints", "Cancellation", "Motion at 3600 rpm", "Findings"]) expect(out.split("\n")).toContain(part);
    expect(out).not.toContain("\u001B");
    expect(out.split("\n").filter((line) => line.length > 80)).toEqual([]);
  });

  it("colours when asked, and never against NO_COLOR", async () => {
    expect((await program.run(["analyse", "case.json"], { env: { FORCE_COLOR: "1" } })).out).toContain("\u001B[");
    expect((await program.run(["analyse", "case.json"], { env: { FORCE_COLOR: "1", NO_COLOR: "1" } })).out).not.toContain("\u001B[");
  });
});

describe("exit codes", () => {
  it("is 0 for any verdict, and 1 under --strict when a limit is passed or a stop is open", async () => {
    const code = async (...args: string[]) => (await program.run(["analyse", ...args])).code;
    expect(await code("over.json")).toBe(0);
    expect(await code("over.json", "--strict")).toBe(1);
    expect(await code("hanging.json")).toBe(0);
    expect(await code("hanging.json", "--strict")).toBe(1);
    expect(await code("case.json", "--strict")).toBe(0);
  });

  it("is 1 with one line when nothing is gauged", async () => {
    const { code, err } = await program.run(["analyse", "ungauged.json", "--json"]);
    expect([code, err]).toEqual([
      1,
      "ungauged.json: nothing can be answered, because no shaft has been gauged; gauge the shafts at ride height and add the readings\n",
    ]);
  });

  it("is 1 with one line when the stage asked for was never gauged", async () => {
    const { code, out, err } = await program.run(["analyse", "case.json", "--stage", "after"]);
    expect([code, out, err]).toEqual([1, "", '--stage: the case has no gauging of stage "after"; it has as-found\n']);
  });
});

describe("--accept", () => {
  it("withholds every verdict until a person accepts, then records it once", async () => {
    program.broken("accept.json", (document) => {
      document.gauging[0].state.wheels = "hanging";
      document["x-own"] = { kept: true };
    });
    const before = await program.run(["analyse", "accept.json"]);
    expect(before.out).toMatch(/These are not road angles/);
    expect(before.out).toMatch(/--accept gauging\.wheels-hanging/);
    expect(before.out).not.toMatch(/within limits/);

    const accepted = await program.run(["analyse", "accept.json", "--accept", "gauging.wheels-hanging", "--strict"]);
    expect([accepted.code, accepted.err]).toEqual([0, "Accepted gauging.wheels-hanging: recorded in accept.json.\n"]);
    expect(accepted.out).toMatch(/within limits/);
    const restored = restore(read("accept.json"));
    expect(restored.ok && restored.case.acceptedFindings?.map(({ code }) => code)).toEqual(["gauging.wheels-hanging"]);
    expect(JSON.parse(read("accept.json"))["x-own"]).toEqual({ kept: true });

    const bytes = read("accept.json");
    expect((await program.run(["analyse", "accept.json", "--accept", "gauging.wheels-hanging"])).err).toBe(
      "Accepted gauging.wheels-hanging: recorded before.\n",
    );
    expect((await program.run(["analyse", "accept.json"])).out).not.toMatch(/These are not road angles: a stop/);
    expect(read("accept.json")).toBe(bytes);
    expect(readdirSync(program.folder).filter((name) => name.endsWith(".tmp"))).toEqual([]);
  });

  it("records nothing for a stop that is not there", async () => {
    const bytes = read("case.json");
    const { code, err } = await program.run(["analyse", "case.json", "--accept", "gauging.wheels-hanging"]);
    expect([code, err]).toEqual([0, "--accept gauging.wheels-hanging: there is no such stop finding here, so nothing was recorded.\n"]);
    expect(read("case.json")).toBe(bytes);
  });

  it("holds for this run only on standard input", async () => {
    const { code, err } = await program.run(["analyse", "-", "--accept", "gauging.wheels-hanging"], { stdin: read("hanging.json") });
    expect([code, err]).toEqual([0, "Accepted gauging.wheels-hanging for this run only: standard input cannot be written back.\n"]);
  });
});
