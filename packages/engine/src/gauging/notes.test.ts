import { describe, expect, test } from "vitest";
import { degreesToRadians, metres } from "../units/index.js";
import { fuseGauging } from "./fuse-gauging.js";
import { absolute, codesOf, difference, drivelineWith, findingOf, gaugingWith } from "./sample-gauging.test-support.js";

const driveline = drivelineWith("front");
const fuse = (...of: Parameters<typeof gaugingWith>) => fuseGauging(gaugingWith(...of), driveline);

const source = absolute("source", "face", 1.8);
const sourceEnd = absolute("front", "source-end", 4.4);
const drivenEnd = absolute("front", "driven-end", 4.5);
const driven = absolute("driven", "face", 2);
const all = [source, sourceEnd, drivenEnd, driven];
const ties = [difference("source", "front", 2.6), difference("front", "driven", -2.5)];

describe("how the vehicle stood", () => {
  test.each([
    ["drooped", "gauging.not-at-ride-height", "stop"],
    ["compressed", "gauging.not-at-ride-height", "stop"],
    ["laden", "gauging.laden", "note"],
  ] as const)("%s", (rideHeight, code, severity) => {
    expect(findingOf(fuse(all, { state: { rideHeight } }), code)?.severity).toBe(severity);
  });
  test("wheels hanging", () => {
    expect(findingOf(fuse(all, { state: { wheels: "hanging" } }), "gauging.wheels-hanging")?.severity).toBe("stop");
  });
  test.each(["on-ground", "on-drive-on-lift", "axle-on-stands-at-ride-height"] as const)("at ride height, %s: nothing to say", (wheels) => {
    const codes = codesOf(fuse(all, { state: { wheels } }));
    expect(codes.filter((code) => ["gauging.not-at-ride-height", "gauging.wheels-hanging", "gauging.laden"].includes(code))).toEqual([]);
  });
});

test("nothing read is a stop, and says nothing else about readings", () => {
  const model = fuse([], { zeroCheckDeg: [0.1, 0.1] });
  expect(findingOf(model, "gauging.nothing-read")?.severity).toBe("stop");
  expect(codesOf(model)).toEqual(["gauging.nothing-read", "gauging.heading-not-measured"]);
  expect(model.inclination).toEqual([null, null, null]);
});

test("a shaft that was not read is named with the place to read", () => {
  const model = fuse([source, driven]);
  expect(findingOf(model, "gauging.shaft-not-read")).toMatchObject({
    severity: "warn",
    params: { shaft: "front", read: "front:source-end" },
  });
  expect(codesOf(fuse(all))).not.toContain("gauging.shaft-not-read");
});

describe("the zero", () => {
  const otherSide = absolute("driven", "face", 2, -1);
  test("unchecked, all from one side: a note", () => {
    const model = fuse(all);
    expect(findingOf(model, "gauging.zero-not-checked")?.severity).toBe("note");
    expect(codesOf(model)).not.toContain("gauging.sides-mixed");
  });
  test("unchecked, from both sides: a warning, twice", () => {
    const model = fuse([source, sourceEnd, drivenEnd, otherSide]);
    expect(findingOf(model, "gauging.zero-not-checked")?.severity).toBe("warn");
    expect(findingOf(model, "gauging.sides-mixed")?.severity).toBe("warn");
  });
  test("checked, from both sides: a note", () => {
    const model = fuse([source, sourceEnd, drivenEnd, otherSide], { zeroCheckDeg: [0.1, -0.1] });
    expect(findingOf(model, "gauging.sides-mixed")?.severity).toBe("note");
    expect(codesOf(model)).not.toContain("gauging.zero-not-checked");
  });
  test("checked, from one side: nothing to say", () => {
    const codes = codesOf(fuse(all, { zeroCheckDeg: [0.1, -0.1] }));
    expect(codes).not.toContain("gauging.sides-mixed");
    expect(codes).not.toContain("gauging.zero-not-checked");
  });
});

describe("readings that nothing checks", () => {
  const extras = (...of: Parameters<typeof gaugingWith>) =>
    fuse(...of)
      .findings.filter(({ code }) => code === "gauging.no-check-reading")
      .map(({ params }) => [params.shaft, params.extra]);

  test("a tube read at both ends is checked, source and driven are not", () => {
    expect(extras(all)).toEqual([
      ["source", "between:source,front"],
      ["driven", "between:front,driven"],
    ]);
  });
  test("a tube read at one end wants the other", () => {
    expect(extras([source, sourceEnd, driven])).toContainEqual(["front", "front:driven-end"]);
  });
  test("a tube read from both sides wants the turn-round check", () => {
    expect(extras([source, sourceEnd, absolute("front", "driven-end", 4.5, -1), driven])).toContainEqual(["front", "turn-round"]);
  });
  test("a shaft reached by a difference alone wants a reading of its own", () => {
    expect(extras([sourceEnd, drivenEnd, ...ties])).toEqual([
      ["source", "source"],
      ["driven", "driven"],
    ]);
  });
  test("with zeroed readings between all shafts nothing is missing", () => {
    expect(extras([...all, ...ties])).toEqual([]);
  });
});

describe("lower end worth a second look", () => {
  const lookAgain = (...of: Parameters<typeof gaugingWith>) =>
    fuse(...of)
      .findings.filter(({ code }) => code === "gauging.check-lower-end")
      .map(({ params }) => params.shaft);
  const along = (deg: number) => absolute("front", "along", deg);

  test("where the other end would straighten both joints", () => {
    expect(lookAgain([absolute("source", "face", 3.8), along(-4), absolute("driven", "face", 3.5)])).toContain("front");
  });
  test("not where a check reading stands by", () => {
    const ends = [absolute("front", "source-end", -4), absolute("front", "driven-end", -4)];
    expect(lookAgain([absolute("source", "face", 3.8), ...ends, absolute("driven", "face", 3.5)])).not.toContain("front");
  });
  test("not where the joints are small anyway", () => {
    expect(lookAgain([absolute("source", "face", 1.4), along(-1.4), absolute("driven", "face", 1.4)])).toEqual([]);
  });
  test("not where one joint would gain what the other loses", () => {
    expect(lookAgain([absolute("source", "face", 5), along(-3), absolute("driven", "face", -5)])).not.toContain("front");
  });
});

describe("headings", () => {
  const offset = (shaft: string) => ({
    kind: "offset" as const,
    shaft,
    lateral: metres(0.012),
    over: metres(1.18),
    accuracy: metres(0.002),
    path: "h",
  });
  test("unmeasured ones share one finding", () => {
    const model = fuse(all, { headings: [offset("front")] });
    expect(findingOf(model, "gauging.heading-not-measured")).toMatchObject({ severity: "note", params: { shafts: ["source", "driven"] } });
    const assumed = model.sources.filter(({ origin, shape }) => origin === "assumed" && shape === "normal");
    expect(assumed.map(({ of, u }) => [of, u])).toEqual([
      ["heading:source", degreesToRadians(0.5)],
      ["heading:driven", degreesToRadians(0.5)],
    ]);
  });
  test("measured on every shaft: nothing to say", () => {
    const headings = ["source", "front", "driven"].map(offset);
    expect(codesOf(fuse(all, { headings }))).not.toContain("gauging.heading-not-measured");
  });
});
