import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { restore } from "@halfturn/casefile";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildProgram, type Program } from "./program.test-support.js";

let program: Program;
beforeAll(async () => {
  program = await buildProgram();
  program.example("two-piece", "case.json");
  program.example("one-piece", "curable.json");
  // As it came in, before it was put right.
  const repaired = JSON.parse(read("curable.json"));
  const gauging = repaired.gauging.filter(({ stage }: { stage: string }) => stage === "as-found");
  writeFileSync(program.path("curable.json"), JSON.stringify({ ...repaired, gauging }));
  program.example("corrected", "corrected.json");
  program.example("four-wheel-drive", "four.json");
  program.broken("no-phasing.json", ({ drivelines: [driveline] }) => Object.assign(driveline.sections[0], { phasingMeasured: false }));
  program.broken("no-adjusters.json", (document) => delete document.adjusters);
  program.broken("hanging.json", ({ gauging: [gauging] }) => Object.assign(gauging.state, { wheels: "hanging" }));
  program.broken("no-arm.json", ({ drivelines: [driveline] }) => delete driveline.axle.centreToJointMm);
  program.broken("no-slip.json", ({ drivelines: [driveline] }) => delete driveline.sections[1].slip);
  program.broken("pulled-out.json", ({ drivelines: [driveline] }) => Object.assign(driveline.sections[1].slip, { engagedMm: 20 }));
  program.broken("huge.json", ({ adjusters }) => {
    for (const adjuster of adjusters) if (adjuster.stock?.sizesDeg) adjuster.stock = { minDeg: -5, maxDeg: 5, stepDeg: 0.001 };
  });
}, 60_000);
afterAll(() => program.remove());

/** Few draws: what is tested here does not hang on their number. */
const plan = (...args: readonly string[]) => program.run(["plan", "--draws", "500", ...args]);
/** Text without its line breaks. */
const flowing = (text: string): string => text.replaceAll(/\s+/g, " ");
const read = (name: string): string => readFileSync(program.path(name), "utf8");
// biome-ignore lint/suspicious/noExplicitAny: the contract as any reader of JSON sees it
const planned = async (...args: readonly string[]): Promise<any> => JSON.parse((await plan(...args, "--json")).out);

describe("plan --json", () => {
  it("prints the contract and nothing else, the same bytes each time and in each language", async () => {
    const first = await plan("curable.json", "--json");
    expect([first.code, first.err]).toEqual([0, ""]);
    const json = JSON.parse(first.out);
    expect(Object.keys(json)).toEqual([
      "format",
      "version",
      "seed",
      "examined",
      "plans",
      "blockedBy",
      "nearest",
      "doingNothing",
      "bestSingleChange",
      "bestWithoutAxle",
      "optima",
      "missing",
      "notUsed",
      "leftOut",
      "learnedFrom",
    ]);
    expect(json).toMatchObject({ format: "halfturn-plan", version: 1, seed: 1, examined: 55 });
    expect(Object.keys(json.plans[0])).toEqual([
      "changes",
      "probabilityWithin",
      "probabilityOfLimits",
      "labour",
      "margin",
      "tightest",
      "states",
      "instructions",
    ]);
    expect(json.plans[0].instructions.map(({ code }: { code: string }) => code)).toContain("gauge-again");
    expect((await plan("curable.json", "--json")).out).toBe(first.out);
    expect(
      (await program.run(["plan", "--draws", "500", "curable.json", "--json", "--lang", "es"], { env: { FORCE_COLOR: "1" } })).out,
    ).toBe(first.out);
  });

  it("ranks by chance, and predicts of each plan what predict does", async () => {
    const { plans } = await planned("curable.json");
    const chances = plans.map(({ probabilityWithin }: { probabilityWithin: number }) => probabilityWithin);
    expect(chances).toEqual([...chances].sort((a, b) => b - a));
    const changes = plans[0].changes.flatMap(({ adjuster, amount, unit }: { adjuster: string; amount: number; unit: string }) => [
      "--change",
      `${adjuster}=${amount}${unit}`,
    ]);
    const { out } = await program.run(["predict", "curable.json", "--json", "--draws", "500", ...changes]);
    expect(plans[0].states).toEqual(JSON.parse(out).states);
  });

  it("leaves alone what it is told to, by id, by kind, or the axle as a whole", async () => {
    const used = async (...keep: readonly string[]): Promise<readonly string[]> => {
      const { plans } = await planned("curable.json", ...keep.flatMap((word) => ["--keep", word]));
      return [
        ...new Set<string>(plans.flatMap(({ changes }: { changes: { adjuster: string }[] }) => changes.map(({ adjuster }) => adjuster))),
      ];
    };
    expect(await used()).toHaveLength(2);
    expect(await used("mount")).toEqual(["wedge"]);
    for (const word of ["wedge", "axle-wedge", "axle"]) expect(await used(word)).toEqual(["mount"]);
    expect(await used("wedge", "mount")).toEqual([]);
  });
});

describe("plan for people", () => {
  it("ranks, compares, and prints the steps with their cautions beside them, in 80 columns", async () => {
    const { code, out, err } = await plan("curable.json");
    expect([code, err]).toEqual([0, ""]);
    const lines = out.split("\n");
    for (const heading of ["Plans", "For comparison", "Plan 1. What to do", "Measure still"]) expect(lines).toContain(heading);
    expect(lines.filter((line) => /^ {2}\d +(?:[≤<>] )?\d+% +\d+\.\d +-?\d+% {2}\S/.test(line))).toHaveLength(5);
    for (const question of ["Doing nothing", "The single change that helps most", "Without touching the axle"])
      expect(out).toMatch(new RegExp(`^  ${question}: `, "m"));
    expect(flowing(out)).toMatch(/One change cut to measure: Spring pad wedges: \d\.\d+° pinion nose up \(margin \d+%\)/);
    const wedge = lines.findIndex((line) => /^ +\d+\. Spring pad wedges: fit a wedge of 3° on the spring pad/.test(line));
    expect(wedge).toBeGreaterThan(0);
    const next = lines.findIndex((line, k) => k > wedge && /^ +\d+\. /.test(line));
    expect(lines.slice(wedge, next).some((line) => /^ +Caution: After moving an axle/.test(line))).toBe(true);
    expect(out).toMatch(/The vehicle maker's procedure, local rules and licensed practice go before/);
    expect(out).toMatch(/^To record plan 1 in the case: halfturn plan curable\.json --choose 1$/m);
    expect(lines.filter((line) => line.length > 80)).toEqual([]);
    expect(out).not.toContain("\u001B");
  });

  it("prints the steps of the plan asked for", async () => {
    expect((await plan("curable.json", "--show", "3")).out).toMatch(/^Plan 3\. What to do$/m);
  });

  it("says what stands in the way when nothing in stock will do: the nearest try and the limits it passes", async () => {
    const { code, out } = await plan("case.json");
    expect(code).toBe(0);
    expect(out).toMatch(/^Nothing in stock keeps every limit\.\n {2}Nearest: \S/m);
    expect(out).toMatch(/^What blocks it\n {2}\S/m);
    expect(out).not.toMatch(/What to do/);
    expect((await plan("case.json", "--show", "1")).out).toMatch(/^Plan 1\. What to do$/m);
  });

  it("gives the reason where nothing may be fitted and nothing left as it is", async () => {
    const { code, out } = await plan("pulled-out.json");
    expect(code).toBe(0);
    expect(out).toMatch(/the slip spline of Rear section would be pulled out by/);
    expect(await plan("pulled-out.json", "--show", "1")).toEqual({ code: 2, out: "", err: "--show: there is no plan 1; there is none\n" });
  });

  it("names the missing tape measures and what each would bring", async () => {
    expect((await plan("no-arm.json")).out).toMatch(/axle centre to the last joint: takes up to 0\.\d+° off/);
    const { out } = await plan("no-slip.json");
    expect(out).toMatch(/engagement and travel of the slip spline: before anything is fitted/);
    expect(out).toMatch(/^ {2}1 +≤ \d+% /m);
  });

  it("uses and names what a gauging after an earlier correction taught", async () => {
    expect(flowing((await plan("corrected.json")).out)).toMatch(
      /are corrected by what was gauged after an earlier correction \(4 readings\)/,
    );
    expect((await planned("corrected.json")).learnedFrom).toEqual([0]);
  });

  it("leaves out a driveline under a stop finding, with all that moves it, and plans the other", async () => {
    const { code, out } = await plan("four.json");
    expect(code).toBe(0);
    expect(out).toMatch(/^Left out\n {2}\S/m);
    expect(out).toMatch(/--accept gauging\.zero-check-disagrees/);
    expect(out).toMatch(/would also move/);
  });

  it("speaks Spanish", async () => {
    const { out } = await plan("curable.json", "--lang", "es");
    for (const part of ["Planes", "En comparación", "Precaución: ", "Falta por medir"]) expect(out).toContain(part);
    expect(out).not.toMatch(/Caution|Chance|What to do/);
  });
});

describe("plan refuses", () => {
  it.each([
    ["no-adjusters.json", 1, /adjusters: the case lists nothing that could be adjusted/],
    ["no-phasing.json", 1, /drivelines\[0\]\.sections\[0\]: the phasing of Front section was not measured/],
    ["hanging.json", 1, /a stop finding says .*\n.*--accept gauging\.wheels-hanging/],
    ["huge.json", 2, /combinations, more than can be looked through; allow fewer changes at once with --max-changes/],
  ])("%s with exit %d", async (file, exitCode, line) => {
    const { code, out, err } = await plan(file, "--max-changes", "3");
    expect([code, out]).toEqual([exitCode, ""]);
    expect(err).toMatch(line);
    expect((await plan(file, "--max-changes", "3", "--json")).out).toBe("");
  });

  it.each([
    [["--keep", "wege"], '--keep: there is no adjuster and no kind "wege"; did you mean "wedge"?'],
    [["--show", "50", "--keep", "mount"], "--show: there is no plan 50; write a number from 1 to 11"],
    [["--choose", "0"], '--choose: "0" is not a whole number from 1 to 50; write one'],
    [["--max-changes", "9"], '--max-changes: "9" is not a whole number from 1 to 7; write one'],
  ])("%j with one line and exit 2", async (flags, line) => {
    const { code, out, err } = await plan("curable.json", ...flags);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toBe(`${line}\n`);
  });
});

describe("plan --choose", () => {
  it("writes the plan into the case, loses nothing of it, and analyse and report go on", async () => {
    program.broken("choose.json", (document) => {
      document["x-own"] = { kept: true };
      document.drivelines[0]["x-note"] = "hot";
    });
    const before = JSON.parse(read("choose.json"));
    const { code, out, err } = await plan("choose.json", "--choose", "2");
    expect([code, err]).toEqual([0, "Plan 2 recorded in choose.json.\n"]);
    expect(out).toMatch(/^Plan 2\. What to do$/m);
    const after = JSON.parse(read("choose.json"));
    const { corrections, updatedAt: _at, ...rest } = after;
    const { updatedAt: _before, ...stood } = before;
    expect(rest).toEqual(stood);
    expect(corrections).toHaveLength(1);
    const { plans } = await planned("choose.json");
    expect(corrections[0]).toMatchObject({ state: "chosen", basis: [{ driveline: "rear", gauging: 0 }], changes: plans[1].changes });
    expect(restore(read("choose.json")).ok).toBe(true);
    expect(readdirSync(program.folder).filter((name) => name.endsWith(".tmp"))).toEqual([]);
    expect((await program.run(["analyse", "choose.json"])).code).toBe(0);
    expect((await program.run(["report", "choose.json", "-o", "choose.html"])).code).toBe(0);
    expect(read("choose.html").length).toBeGreaterThan(1000);
  });

  it("chosen again from the same gauging, it takes the place of the first", async () => {
    program.broken("again.json", () => undefined);
    for (const number of ["1", "3"]) expect((await plan("again.json", "--choose", number, "--json")).code).toBe(0);
    const { corrections } = JSON.parse(read("again.json"));
    const { plans } = await planned("again.json");
    expect(corrections.map(({ changes }: { changes: unknown }) => changes)).toEqual([plans[2].changes]);
  });

  it("records nothing where nothing changes, or where there is no file to write to", async () => {
    const bytes = read("corrected.json");
    const idle = await plan("corrected.json", "--choose", "1");
    expect([idle.code, idle.out]).toEqual([2, ""]);
    expect(idle.err).toMatch(/plan 1 changes nothing/);
    expect(read("corrected.json")).toBe(bytes);
    const piped = await program.run(["plan", "-", "--choose", "1"], { stdin: read("case.json") });
    expect(piped).toEqual({ code: 2, out: "", err: "--choose: standard input cannot be written back; name a case file\n" });
  });
});
