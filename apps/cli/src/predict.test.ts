import { readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { buildProgram, type Program } from "./program.test-support.js";

let program: Program;
beforeAll(async () => {
  program = await buildProgram();
  program.example("two-piece", "case.json");
  program.example("four-wheel-drive", "four.json");
  program.broken("hanging.json", ({ gauging: [gauging] }) => Object.assign(gauging.state, { wheels: "hanging" }));
  program.broken("ungauged.json", (document) => Object.assign(document, { gauging: [] }));
  program.broken("no-adjusters.json", (document) => delete document.adjusters);
  program.broken("no-length.json", ({ drivelines: [driveline] }) => delete driveline.sections[0].lengthMm);
  program.broken("no-powertrain.json", ({ vehicle }) => delete vehicle.powertrain);
  program.broken("too-short.json", ({ drivelines: [driveline] }) => {
    const [front, back] = driveline.sections;
    front.slip = back.slip;
    delete back.slip;
    back.lengthMm = 30;
  });
}, 60_000);
afterAll(() => program.remove());

/** Few draws: what is tested here does not hang on their number. */
const predict = (...args: readonly string[]) => program.run(["predict", "--draws", "500", ...args]);

/** Text without its line breaks. */
const flowing = (text: string): string => text.replaceAll(/\s+/g, " ");

/** Degrees through radians and back. */
const ROUNDING = 1e-9;

describe("predict --json", () => {
  it("prints the contract and nothing else, the same bytes each time and in each language", async () => {
    const args = ["case.json", "--change", "wedge=2deg", "--change", "bearing-drop=-6mm", "--json"];
    const first = await predict(...args);
    expect([first.code, first.err]).toEqual([0, ""]);
    const json = JSON.parse(first.out);
    expect(Object.keys(json)).toEqual(["format", "version", "seed", "changes", "states", "blockedBy", "missing", "leftOut", "learnedFrom"]);
    expect(json).toMatchObject({ format: "halfturn-prediction", version: 1, seed: 1 });
    expect(json.changes).toEqual([
      { adjuster: "wedge", amount: 2, unit: "deg" },
      { adjuster: "bearing-drop", amount: -6, unit: "mm" },
    ]);
    expect(json.states.map(({ id }: { id: string }) => id)).toEqual(["normal", "laden", "pulling-away"]);
    const [driveline] = json.states[0].drivelines;
    expect(driveline).toMatchObject({ id: "rear", stage: "as-found", gauging: 0, geometry: "full", slipVerdict: "within" });
    expect(Object.keys(driveline.slipTravelMm)).toEqual(["value", "u", "interval95"]);
    expect((await predict(...args)).out).toBe(first.out);
    expect((await program.run(["predict", "--draws", "500", ...args, "--lang", "es"], { env: { FORCE_COLOR: "1" } })).out).toBe(first.out);
  });

  it("leaves every angle as analyse gives it where nothing is changed, and adds a wedge to the pinion alone", async () => {
    const analysed = JSON.parse((await program.run(["analyse", "case.json", "--json"])).out).drivelines[0];
    const shafts = async (change: string): Promise<readonly number[]> => {
      const json = JSON.parse((await predict("case.json", "--change", change, "--json")).out);
      return json.states[0].drivelines[0].shafts.map(({ inclinationDeg }: { inclinationDeg: { value: number } }) => inclinationDeg.value);
    };
    const still = await shafts("wedge=0deg");
    const found = analysed.shafts.map(({ inclinationDeg }: { inclinationDeg: { value: number } }) => inclinationDeg.value);
    for (const [k, value] of still.entries()) expect(Math.abs(value - found[k])).toBeLessThan(ROUNDING);
    const wedged = await shafts("wedge=2deg");
    expect(Math.abs((wedged.at(-1) ?? 0) - (still.at(-1) ?? 0) - 2)).toBeLessThan(ROUNDING);
    expect(wedged[0]).toBe(still[0]);
  });

  it("takes the gauging asked for", async () => {
    program.example("one-piece", "staged.json");
    const stage = async (...flags: readonly string[]) =>
      JSON.parse((await predict("staged.json", "--change", "wedge=1deg", "--json", ...flags)).out).states[0].drivelines[0].stage;
    expect([await stage(), await stage("--gauging", "1")]).toEqual(["after", "as-found"]);
  });
});

describe("predict for people", () => {
  it("shows before beside after for every state in 80 columns, without colour when it is not a terminal", async () => {
    const { code, out, err } = await predict("case.json", "--change", "wedge=2deg");
    expect([code, err]).toEqual([0, ""]);
    const lines = out.split("\n");
    expect(lines.filter((line) => line.startsWith("State: "))).toEqual(["State: normal", "State: laden", "State: pulling-away"]);
    expect(lines).toContain("  Spring pad wedges: 2° pinion nose up");
    expect(lines.filter((line) => /^ {4}J3 +\d+\.\d\d° +\d+\.\d\d° +\d+\.\d\d° to \d+\.\d\d° +\S/.test(line))).toHaveLength(3);
    for (const part of ["Equivalent angle", "Bench residual", "Driven end", "Rear section, coast", "Slip travel: "]) {
      expect(lines.filter((line) => line.startsWith(`    ${part}`))).toHaveLength(3);
    }
    expect(out).not.toContain("\u001B");
    expect(lines.filter((line) => line.length > 80)).toEqual([]);
  });

  it("says of a size between those in stock that it would have to be made", async () => {
    expect(flowing((await predict("case.json", "--change", "wedge=1.5deg")).out)).toMatch(
      /1\.5° pinion nose up: not in stock in this size/,
    );
    expect((await predict("case.json", "--change", "wedge=2deg", "--change", "bearing-drop=-6mm")).out).not.toMatch(/not in stock/);
  });

  it("says in a line what nothing moves", async () => {
    program.example("four-wheel-drive", "accepted.json");
    const { out } = await predict("accepted.json", "--accept", "gauging.zero-check-disagrees", "--change", "rear-height=-10mm");
    expect(out).toMatch(/^ {2}\S.*: nothing changes\.$/m);
  });

  it("speaks Spanish", async () => {
    const { out } = await predict("case.json", "--change", "wedge=2deg", "--lang", "es");
    expect(out).toMatch(/2° con el morro del piñón hacia arriba/);
    expect(out).toMatch(/Ángulo equivalente/);
    expect(out).not.toMatch(/Equivalent angle|What the change/);
  });

  it("shows a phasing that nobody measured, on which its motion rests", async () => {
    program.broken("no-phasing.json", ({ drivelines: [driveline] }) => Object.assign(driveline.sections[0], { phasingMeasured: false }));
    const { code, out } = await predict("no-phasing.json", "--change", "wedge=2deg");
    expect(code).toBe(0);
    expect(out).toMatch(/driveline\.phasing-not-measured at drivelines\[0\]/);
  });
});

describe("predict refuses", () => {
  it.each([
    ["wegde=2deg", /there is no adjuster "wegde" in this case; most likely "wedge" is meant \(allowed: /],
    ["wedge=2mm", /"2mm" is in the wrong unit; "wedge" takes degrees, so write wedge=2deg/],
    ["wedge=2", /"2" has no unit; "wedge" takes degrees/],
    ["wedge=8deg", /8° is beyond what "wedge" has in stock; write from -3 to 3°/],
    ["bearing-drop=-9mm", /9 mm cannot be taken out at "bearing-drop", where 6 mm is fitted/],
    ["turn-front=1.5step", /is no whole number of spline steps/],
    ["wedge=2.5.1deg", /"2\.5\.1deg" cannot be read: it has two decimal signs/],
    ["wedge", /"wedge" is not a change; write ID=AMOUNT/],
  ])("--change %s with one line and exit 2", async (change, line) => {
    const { code, out, err } = await predict("case.json", "--change", change);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toMatch(line);
    expect(err).toMatch(/^--change: [^\n]+\n$/);
  });

  it.each([
    ["ungauged.json", 1, /nothing can be answered, because no shaft has been gauged/],
    ["no-adjusters.json", 1, /^no-adjusters\.json: adjusters: the case lists nothing that could be adjusted/],
    ["too-short.json", 2, /the joints would lie further apart than the shafts reach in state laden/],
  ])("%s with exit %d", async (file, exitCode, line) => {
    const { code, out, err } = await predict(file, "--change", "wedge=1deg");
    expect([code, out]).toEqual([exitCode, ""]);
    expect(err).toMatch(line);
  });

  it.each([
    ["no-length.json", "bearing-drop=3mm", /needs every length, and that of Front section is missing/],
    ["no-powertrain.json", "rear-mount=3mm", /its pivot and rear mount are not noted/],
    ["four.json", "mount=5mm", /would also move .*, whose angles are not known to be right/],
  ])("what was not measured: %s %s, exit 1", async (file, change, line) => {
    const { code, out, err } = await predict(file, "--change", change);
    expect([code, out]).toEqual([1, ""]);
    expect(err).toMatch(line);
  });

  it("a stop finding, until a person accepts it and that is recorded", async () => {
    const refused = await predict("hanging.json", "--change", "wedge=1deg");
    expect([refused.code, refused.out]).toEqual([1, ""]);
    expect(refused.err).toMatch(/--accept gauging\.wheels-hanging/);
    const bytes = readFileSync(program.path("hanging.json"), "utf8");
    const mistyped = await predict("hanging.json", "--change", "wegde=1deg", "--accept", "gauging.wheels-hanging");
    expect([mistyped.code, readFileSync(program.path("hanging.json"), "utf8")]).toEqual([2, bytes]);
    const accepted = await predict("hanging.json", "--change", "wedge=1deg", "--accept", "gauging.wheels-hanging");
    expect([accepted.code, accepted.err]).toEqual([0, "Accepted gauging.wheels-hanging: recorded in hanging.json.\n"]);
    expect(JSON.parse(readFileSync(program.path("hanging.json"), "utf8")).acceptedFindings).toMatchObject([
      { code: "gauging.wheels-hanging" },
    ]);
    expect((await predict("hanging.json", "--change", "wedge=1deg")).out).toMatch(/decision\.stop-accepted at gauging\[0\]/);
  });
});
