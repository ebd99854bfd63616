import { describe, expect, test } from "vitest";
import type { Finding } from "../findings/index.js";
import { fuseGauging } from "./fuse-gauging.js";
import { absolute, codesOf, difference, drivelineWith, findingOf, gaugingWith, inclinationsDeg } from "./sample-gauging.test-support.js";

/** Degrees to radians and back, and the fit. */
const ROUNDING_DEG = 1e-9;
const driveline = drivelineWith("front");
const fuse = (...of: Parameters<typeof gaugingWith>) => fuseGauging(gaugingWith(...of), driveline);

const firstCause = (finding: Finding | undefined): string | undefined => (finding?.params.causes as readonly string[] | undefined)?.[0];

const source = absolute("source", "face", 1.8);
const sourceEnd = absolute("front", "source-end", 4.4);
const drivenEnd = absolute("front", "driven-end", 4.5);
const driven = absolute("driven", "face", 2);
const toFront = difference("source", "front", 2.6);
const toDriven = difference("front", "driven", -2.4);

const CONTRADICTIONS = [
  "gauging.tube-ends-disagree",
  "gauging.repeats-disagree",
  "gauging.difference-disagrees",
  "gauging.sides-disagree",
  "gauging.zero-check-disagrees",
  "gauging.wrong-side-of-level",
  "gauging.rows-swapped",
  "gauging.not-zeroed",
  "gauging.reading-set-aside",
];

test("readings that agree contradict nothing", () => {
  const model = fuse([source, sourceEnd, drivenEnd, absolute("front", "along", 4.5, -1), driven, toFront, toDriven], {
    zeroCheckDeg: [0.6, -0.6, 1, -0.9],
  });
  expect(codesOf(model).filter((code) => CONTRADICTIONS.includes(code))).toEqual([]);
});

describe("two ends of one tube", () => {
  test("half a degree apart: a stop, for the data do not say which", () => {
    const finding = findingOf(fuse([source, sourceEnd, absolute("front", "driven-end", 5), driven]), "gauging.tube-ends-disagree");
    expect(finding?.severity).toBe("stop");
    expect(finding?.params).toMatchObject({ shaft: "front", decided: false });
    expect(finding?.params.likelier).toBeUndefined();
    const { sourceEndDeg, drivenEndDeg, differenceDeg, allowedDeg } = (finding?.params ?? {}) as Record<string, number>;
    expect(Math.abs((sourceEndDeg as number) - 4.4)).toBeLessThan(ROUNDING_DEG);
    expect(Math.abs((drivenEndDeg as number) - 5)).toBeLessThan(ROUNDING_DEG);
    expect(Math.abs((differenceDeg as number) - 0.6)).toBeLessThan(ROUNDING_DEG);
    // 3.25 standard uncertainties of a difference of two readings.
    expect(Math.abs((allowedDeg as number) - 3.25 * Math.SQRT2 * Math.hypot(0.1 / Math.sqrt(3), 0.1 / Math.sqrt(12)))).toBeLessThan(
      ROUNDING_DEG,
    );
    expect(finding?.params.causes).toEqual(expect.arrayContaining(["rust-or-paint", "bent-tube", "not-on-machined-face"]));
  });
  test("with the lower end of one wrong: the lower end is named, whose is not", () => {
    const model = fuse([source, sourceEnd, absolute("front", "driven-end", -4.5), driven]);
    expect(findingOf(model, "gauging.tube-ends-disagree")).toMatchObject({ severity: "stop", params: { causes: ["lower-end"] } });
    expect(findingOf(model, "gauging.wrong-side-of-level")?.params.shaft).toBe("front");
    expect(codesOf(model)).not.toContain("gauging.reading-set-aside");
  });
});

describe("where the data decide, the wrong reading is set aside and the rest stands", () => {
  test("a third reading of one spot", () => {
    const along = (deg: number) => absolute("front", "along", deg);
    const model = fuse([source, along(4.4), along(4.5), along(5.6), driven]);
    const path = "gauging[0].readings[3]";
    expect(findingOf(model, "gauging.repeats-disagree")).toMatchObject({
      severity: "warn",
      path,
      params: { likelier: path, decided: true },
    });
    expect(findingOf(model, "gauging.reading-set-aside")).toMatchObject({ severity: "warn", path, params: { shaft: "front" } });
    expect(Math.abs((inclinationsDeg(model)[1] as number) - 4.45)).toBeLessThan(ROUNDING_DEG);
    expect(model.sources.map((s) => s.path)).not.toContain(path);
  });
  test("a wrong lower end where differences tie the shafts", () => {
    const model = fuse([absolute("source", "face", -1.8), sourceEnd, drivenEnd, driven, toFront, toDriven]);
    const path = "gauging[0].readings[0]";
    expect(findingOf(model, "gauging.wrong-side-of-level")).toMatchObject({ path, params: { shaft: "source" } });
    expect(findingOf(model, "gauging.difference-disagrees")).toMatchObject({ severity: "warn", path });
    expect(findingOf(model, "gauging.reading-set-aside")?.path).toBe(path);
    expect(Math.abs((inclinationsDeg(model)[0] as number) - 1.8)).toBeLessThan(0.1);
  });
  test("a difference that was not zeroed", () => {
    const model = fuse([source, sourceEnd, drivenEnd, driven, difference("source", "front", 4.5)]);
    expect(findingOf(model, "gauging.difference-disagrees")).toMatchObject({ severity: "warn", params: { causes: ["not-zeroed"] } });
    expect(findingOf(model, "gauging.not-zeroed")).toMatchObject({
      path: "gauging[0].readings[4]",
      params: { from: "source", to: "front" },
    });
    expect(findingOf(model, "gauging.reading-set-aside")?.path).toBe("gauging[0].readings[4]");
  });
  test("two rows swapped", () => {
    const model = fuse([absolute("source", "face", 4.4), absolute("front", "source-end", 1.8), drivenEnd, driven, toFront, toDriven]);
    expect(findingOf(model, "gauging.rows-swapped")?.params.shafts).toEqual(expect.arrayContaining(["source", "front"]));
    expect(codesOf(model).filter((code) => code === "gauging.reading-set-aside")).toHaveLength(2);
    expect(Math.abs((inclinationsDeg(model)[0] as number) - 1.8)).toBeLessThan(0.1);
  });
});

test("swapped rows that nothing decides stop, with the swap as the first cause", () => {
  const model = fuse([absolute("source", "face", 4.4), absolute("front", "source-end", 1.8), drivenEnd, driven]);
  const finding = findingOf(model, "gauging.tube-ends-disagree");
  expect(finding?.severity).toBe("stop");
  expect(firstCause(finding)).toBe("rows-swapped");
});

describe("sides", () => {
  const otherSide = (deg: number) => absolute("front", "driven-end", deg, -1);
  test("left and right that the checked zero does not explain", () => {
    const model = fuse([source, sourceEnd, otherSide(5.2), driven], { zeroCheckDeg: [0.5, -0.5] });
    expect(findingOf(model, "gauging.sides-disagree")).toMatchObject({ severity: "stop", params: { shaft: "front" } });
  });
  test("left and right that the checked zero explains", () => {
    const model = fuse([source, sourceEnd, otherSide(3.8), driven], { zeroCheckDeg: [0.8, -0.2] });
    expect(codesOf(model)).not.toContain("gauging.sides-disagree");
  });
  test("a wrong lower end is not taken for a zero of four degrees", () => {
    const model = fuse([source, sourceEnd, otherSide(-4.4), driven]);
    expect(findingOf(model, "gauging.sides-disagree")?.severity).toBe("stop");
    expect(findingOf(model, "gauging.wrong-side-of-level")?.params.shaft).toBe("front");
  });
  test("a wrong side ranks among the causes where the zero is large enough to matter", () => {
    const twice = [absolute("front", "source-end", 4.7), absolute("front", "along", 4.7), absolute("front", "driven-end", 4.1)];
    const model = fuse([source, ...twice, driven], { zeroCheckDeg: [1.3, -0.7, 0.3, 0.3] });
    expect(firstCause(model.findings.find(({ params }) => params.causes !== undefined))).toBe("side");
  });
});

describe("turn-round check", () => {
  const readings = [source, sourceEnd, drivenEnd, driven];
  test("pairs apart: their zeros are compared", () => {
    const finding = findingOf(fuse(readings, { zeroCheckDeg: [0.2, 0, 1.2, -0.1] }), "gauging.zero-check-disagrees");
    expect(Math.abs((finding?.params.firstDeg as number) - 0.1)).toBeLessThan(ROUNDING_DEG);
    expect(Math.abs((finding?.params.differenceDeg as number) - 0.45)).toBeLessThan(ROUNDING_DEG);
  });
  test("a zero of several degrees is doubted, without a stop where all shafts were read from one side", () => {
    const model = fuse(readings, { zeroCheckDeg: [2.9, 2.7] });
    expect(findingOf(model, "gauging.zero-check-disagrees")).toMatchObject({
      severity: "warn",
      params: { causes: expect.arrayContaining(["zero-far-off"]) },
    });
    expect(Math.abs((inclinationsDeg(model)[0] as number) - (1.8 - 2.8))).toBeLessThan(ROUNDING_DEG);
  });
  test("the same with shafts read from both sides stops", () => {
    const mixed = [source, sourceEnd, drivenEnd, absolute("driven", "face", 2, -1)];
    expect(findingOf(fuse(mixed, { zeroCheckDeg: [2.9, 2.7] }), "gauging.zero-check-disagrees")?.severity).toBe("stop");
  });
});

test("a gauge finer than anything real contradicts itself without a fault of the program", () => {
  const readings = [absolute("source", "along", -3), absolute("source", "along", -89.9, -1), absolute("driven", "along", 0.1, -1)];
  const model = fuse(readings, { zeroCheckDeg: [-80, -80], resolutionDeg: 1e-9, accuracyDeg: 0 });
  expect(model.findings.some(({ severity }) => severity === "stop")).toBe(true);
});

test("two contradictions in one gauging are both reported", () => {
  const twoPiece = drivelineWith("front", "back");
  const ends = (shaft: string, a: number, b: number) => [absolute(shaft, "source-end", a), absolute(shaft, "driven-end", b)];
  const model = fuseGauging(gaugingWith([source, ...ends("front", 4.4, 5.1), ...ends("back", 3, 2.2), driven]), twoPiece);
  const shafts = model.findings.filter(({ code }) => code === "gauging.tube-ends-disagree").map(({ params }) => params.shaft);
  expect([...shafts].sort()).toEqual(["back", "front"]);
});
