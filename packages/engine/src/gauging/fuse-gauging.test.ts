import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { degreesToRadians, type Radians } from "../units/index.js";
import { fuseGauging } from "./fuse-gauging.js";
import type { Gauging, Reading } from "./gauging.js";
import { observationsOf } from "./observation.js";
import { absolute, codesOf, difference, drivelineWith, gaugingWith, inclinationsDeg, inclinationU } from "./sample-gauging.test-support.js";
import { isZeroOpen } from "./zero-prior.js";

/** Readings without error leave only the rounding of some dozens of additions. */
const ROUNDING = 1e-12;
const driveline = drivelineWith("front");
const shafts = ["source", "front", "driven"];

const truth = { source: 1.8123, front: 4.4567, driven: 2.0991 };
const zero = 0.237;
const exact = (deg: number, sign: 1 | -1) => deg + sign * zero;
const read = (shaft: keyof typeof truth, place: "face" | "along" | "source-end" | "driven-end", sign: 1 | -1, gaugeZero = true) =>
  absolute(shaft, place, gaugeZero ? exact(truth[shaft], sign) : truth[shaft], sign);
const turnRound = [1.1 + zero, -1.1 + zero];

function expectTruth(gauging: Gauging): void {
  const model = fuseGauging(gauging, driveline);
  Object.values(truth).forEach((deg, s) => {
    expect(Math.abs((model.inclination[s] as number) - degreesToRadians(deg))).toBeLessThan(ROUNDING);
  });
}

describe("exact readings give the shafts exactly", () => {
  test("from one side with a checked zero", () => {
    const readings = [read("source", "face", 1), read("front", "source-end", 1), read("front", "driven-end", 1), read("driven", "face", 1)];
    expectTruth(gaugingWith(readings, { zeroCheckDeg: turnRound }));
  });
  test("from both sides with a checked zero", () => {
    const readings = [
      read("source", "face", 1),
      read("front", "source-end", -1),
      read("front", "driven-end", -1),
      read("driven", "face", 1),
    ];
    expectTruth(gaugingWith(readings, { zeroCheckDeg: turnRound }));
  });
  test("from both sides of one tube, without a check", () => {
    expectTruth(
      gaugingWith([read("source", "face", 1), read("front", "source-end", 1), read("front", "driven-end", -1), read("driven", "face", 1)]),
    );
  });
  test("from both sides on shafts that a difference ties", () => {
    const tie = difference("source", "front", truth.front - truth.source);
    expectTruth(gaugingWith([read("source", "face", 1), read("front", "along", -1), read("driven", "face", 1), tie]));
  });
  test("by differences alone from one shaft", () => {
    const ties = [difference("source", "front", truth.front - truth.source), difference("front", "driven", truth.driven - truth.front)];
    expectTruth(gaugingWith([read("source", "face", 1), ...ties], { zeroCheckDeg: turnRound }));
  });
  test("with a true gauge that nobody checked", () => {
    const readings = (["source", "front", "driven"] as const).map((shaft) => read(shaft, "along", 1, false));
    expectTruth(gaugingWith(readings));
    expectTruth(gaugingWith(readings, { common: true }));
  });
  test("with a gauge of common accuracy and a checked zero", () => {
    const readings = (["source", "front", "driven"] as const).map((shaft) => read(shaft, "along", 1));
    expectTruth(gaugingWith(readings, { common: true, zeroCheckDeg: turnRound }));
  });
  test("with a gauge that claims to be perfect", () => {
    const readings = [read("source", "face", 1), read("front", "source-end", 1), read("front", "driven-end", 1), read("driven", "face", 1)];
    expectTruth(gaugingWith(readings, { zeroCheckDeg: turnRound, accuracyDeg: 0, resolutionDeg: 0 }));
  });
});

describe("uncertainty", () => {
  const placing = Math.hypot(0.1 / Math.sqrt(3), 0.1 / Math.sqrt(12));
  const uOf = (gauging: Gauging) => inclinationU(fuseGauging(gauging, driveline));
  const expectDeg = (u: number | undefined, deg: number) => expect(Math.abs((u ?? 0) - degreesToRadians(deg))).toBeLessThan(ROUNDING);

  test("of one reading with an unchecked zero: placing, rounding and 0.3 deg of zero", () => {
    expectDeg(uOf(gaugingWith([absolute("source", "face", 2)]))[0], Math.hypot(placing, 0.3 / Math.sqrt(3)));
  });
  test("of one reading with the zero checked once: the check's own two placings are halved", () => {
    expectDeg(
      uOf(gaugingWith([absolute("source", "face", 2)], { zeroCheckDeg: [0.1, 0.1] }))[0],
      Math.hypot(placing, placing / Math.SQRT2),
    );
  });
  test("two placings on one tube halve the variance of placing and rounding, not of the zero", () => {
    const readings = [absolute("front", "source-end", 2), absolute("front", "driven-end", 2)];
    expectDeg(uOf(gaugingWith(readings))[1], Math.hypot(placing / Math.SQRT2, 0.3 / Math.sqrt(3)));
  });
  test("a common accuracy is not averaged away, a common zero cancels between shafts read from one side", () => {
    const model = fuseGauging(gaugingWith([absolute("source", "face", 2), absolute("front", "along", 4)], { common: true }), driveline);
    expectDeg(inclinationU(model)[0], placing);
    const between = (model.inclinationBy[0] ?? []).map((by, k) => (by - (model.inclinationBy[1]?.[k] ?? 0)) * (model.sources[k]?.u ?? 0));
    expectDeg(Math.hypot(...between), Math.hypot(0.1, 0.1) / Math.sqrt(12));
  });
  test("a difference has two placings and one rounding", () => {
    const u = uOf(gaugingWith([absolute("source", "face", 2), difference("source", "front", 1)], { zeroCheckDeg: [0, 0] }));
    const alone = Math.hypot(0.1 / Math.sqrt(3), 0.1 / Math.sqrt(3), 0.1 / Math.sqrt(12));
    expectDeg(u[1], Math.hypot(placing, placing / Math.SQRT2, alone));
  });
});

test("what the readings do not reach stays unknown, and its row is nought", () => {
  const model = fuseGauging(gaugingWith([absolute("source", "face", 2), difference("front", "driven", 1)]), driveline);
  expect(inclinationsDeg(model).map((deg) => deg === null)).toEqual([false, true, true]);
  expect(model.inclinationBy[1]?.every((by) => by === 0)).toBe(true);
  expect(model.findings.filter(({ severity }) => severity === "warn")).toEqual([
    {
      code: "gauging.group-not-tied",
      severity: "warn",
      path: "gauging[0].readings",
      params: { shafts: ["front", "driven"], read: "between:source,front" },
    },
  ]);
});

describe("shafts read against one another only", () => {
  const threeSections = drivelineWith("a", "b", "c");
  const differences = (model: ReturnType<typeof fuseGauging>, from: number, to: number) => ({
    value: (model.inclination[to] as number) - (model.inclination[from] as number),
    u: Math.hypot(...model.sources.map(({ u }, k) => ((model.inclinationBy[to]?.[k] ?? 0) - (model.inclinationBy[from]?.[k] ?? 0)) * u)),
  });

  test("keep the angles between them, and the level is assumed and said", () => {
    const readings = [difference("source", "a", 3.2), difference("a", "b", -0.5), difference("b", "c", 1), difference("c", "driven", -4)];
    const model = fuseGauging(gaugingWith(readings), threeSections);
    [3.2, -0.5, 1, -4].forEach((deg, s) => {
      const { value, u } = differences(model, s, s + 1);
      expect(Math.abs(value - degreesToRadians(deg))).toBeLessThan(ROUNDING);
      // Two placings and one rounding of 0.1 degrees; the level moves both alike.
      expect(Math.abs(u - degreesToRadians(Math.hypot(0.1 / Math.sqrt(3), 0.1 / Math.sqrt(3), 0.1 / Math.sqrt(12))))).toBeLessThan(
        ROUNDING,
      );
    });
    expect(inclinationU(model).every((u) => u > degreesToRadians(8))).toBe(true);
    expect(codesOf(model)).toContain("gauging.level-not-read");
    expect(codesOf(model)).not.toContain("gauging.shaft-not-read");
  });
  test("in two groups: only the larger has angles, and nothing is made up between them", () => {
    const readings = [difference("source", "a", 3), difference("b", "c", 1), difference("c", "driven", -4)];
    const model = fuseGauging(gaugingWith(readings), threeSections);
    expect(model.inclination.map((inclination) => inclination === null)).toEqual([true, true, false, false, false]);
    // Both groups are said: the larger by what was assumed of it, the other as read and not tied.
    expect(codesOf(model)).not.toContain("gauging.shaft-not-read");
    expect(
      model.findings
        .filter(({ code }) => /level-not-read|group-not-tied/.test(code))
        .map(({ code, params }) => [code, params.shafts, params.read]),
    ).toEqual([
      ["gauging.group-not-tied", ["source", "a"], "between:a,b"],
      ["gauging.level-not-read", ["b", "c", "driven"], "b:source-end"],
    ]);
  });
  test("beside a shaft that nobody read: the group is named as a group, the lone shaft as not read", () => {
    const model = fuseGauging(gaugingWith([absolute("source", "face", 2), difference("b", "c", 1)]), threeSections);
    expect(model.findings.filter(({ code }) => code === "gauging.shaft-not-read").map(({ params }) => params.shaft)).toEqual([
      "a",
      "driven",
    ]);
    expect(model.findings.filter(({ code }) => code === "gauging.group-not-tied").map(({ params }) => params.shafts)).toEqual([["b", "c"]]);
  });
  test("one reading against gravity makes the assumption needless", () => {
    const model = fuseGauging(gaugingWith([difference("source", "front", 3), absolute("front", "along", 5)]), driveline);
    expect(codesOf(model)).not.toContain("gauging.level-not-read");
  });
});

test("a reading of a shaft that the driveline lacks is a programmer's error", () => {
  expect(() => fuseGauging(gaugingWith([absolute("middle", "along", 2)]), driveline)).toThrow(RangeError);
});

/** A placing somewhere on the driveline, told by its true value alone. */
const spot = fc.oneof(
  fc.record({
    kind: fc.constant("absolute" as const),
    shaft: fc.constantFrom(...shafts),
    zeroSign: fc.constantFrom(1 as const, -1 as const),
  }),
  fc.record({
    kind: fc.constant("difference" as const),
    ends: fc.constantFrom(["source", "front"], ["front", "driven"], ["source", "driven"]),
  }),
);
type SpotSample = typeof spot extends fc.Arbitrary<infer S> ? S : never;

function readingAt(sample: SpotSample, error: number): Omit<Reading, "path"> {
  const of = (shaft: string) => truth[shaft as keyof typeof truth];
  if (sample.kind === "absolute") return absolute(sample.shaft, "along", exact(of(sample.shaft), sample.zeroSign) + error, sample.zeroSign);
  const [from = "", to = ""] = sample.ends;
  return difference(from, to, of(to) - of(from) + error);
}

const errorDeg = fc.double({ min: -0.15, max: 0.15, noNaN: true });
const placed = fc.tuple(spot, errorDeg);

test("the order of the readings does not matter", () => {
  const shuffled = fc
    .array(placed, { minLength: 2, maxLength: 9 })
    .chain((taken) => fc.tuple(fc.constant(taken), fc.shuffledSubarray(taken, { minLength: taken.length, maxLength: taken.length })));
  fc.assert(
    fc.property(shuffled, ([taken, mixed]) => {
      const fused = (list: typeof taken) =>
        fuseGauging(
          gaugingWith(
            list.map(([sample, error]) => readingAt(sample, error) as Reading),
            { zeroCheckDeg: turnRound },
          ),
          driveline,
        );
      const [a, b] = [fused(taken), fused(mixed)];
      a.inclination.forEach((value, s) => {
        const other = b.inclination[s] ?? null;
        expect(other === null).toBe(value === null);
        if (value !== null && other !== null) expect(Math.abs(value - other)).toBeLessThan(ROUNDING);
      });
      expect([...codesOf(a)].sort()).toEqual([...codesOf(b)].sort());
    }),
    { seed: 1, numRuns: 300 },
  );
});

test("another consistent reading never makes a shaft less certain", () => {
  const sets = fc.tuple(fc.array(spot, { minLength: 1, maxLength: 6 }), spot, fc.boolean());
  fc.assert(
    fc.property(sets, ([samples, extra, checked]) => {
      const gauging = (list: readonly SpotSample[]) =>
        gaugingWith(
          list.map((sample) => readingAt(sample, 0) as Reading),
          checked ? { zeroCheckDeg: turnRound } : {},
        );
      const [fewer, more] = [gauging(samples), gauging([...samples, extra])];
      // Where the extra reading is the first to tell the zero, an assumption gives way to a measurement, which may be the less certain of the two.
      fc.pre(isZeroOpen(observationsOf(fewer, shafts), shafts) === isZeroOpen(observationsOf(more, shafts), shafts));
      const [before, after] = [fuseGauging(fewer, driveline), fuseGauging(more, driveline)];
      // An assumed level belongs to the shafts that are tied; with another one it is another assumption.
      fc.pre(!codesOf(before).includes("gauging.level-not-read"));
      fc.pre(
        !codesOf(before)
          .concat(codesOf(after))
          .some((code) => code.endsWith("-disagree") || code.endsWith("-disagrees")),
      );
      const [uBefore, uAfter] = [inclinationU(before), inclinationU(after)];
      before.inclination.forEach((value, s) => {
        if (value !== null) expect(uAfter[s]).toBeLessThanOrEqual((uBefore[s] as number) + ROUNDING);
      });
    }),
    { seed: 2, numRuns: 300 },
  );
});

test("an exact reading more or less leaves the truth where it is", () => {
  fc.assert(
    fc.property(fc.array(spot, { minLength: 0, maxLength: 6 }), (samples) => {
      const base = shafts.map((shaft) => ({ kind: "absolute", shaft, zeroSign: 1 }) as SpotSample);
      const readings = [...base, ...samples].map((sample) => readingAt(sample, 0) as Reading);
      const model = fuseGauging(gaugingWith(readings, { zeroCheckDeg: turnRound }), driveline);
      Object.values(truth).forEach((deg, s) => {
        expect(Math.abs((model.inclination[s] as Radians) - degreesToRadians(deg))).toBeLessThan(ROUNDING);
      });
    }),
    { seed: 3, numRuns: 200 },
  );
});
