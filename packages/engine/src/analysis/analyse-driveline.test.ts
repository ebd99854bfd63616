import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Gauging, Reading } from "../gauging/index.js";
import type { Driveline, Joint } from "../kinematics/index.js";
import { DEFAULT_LIMITS } from "../limits/index.js";
import { degreesToRadians, metres, type Radians, radiansToDegrees, rpm } from "../units/index.js";
import { analyseDriveline } from "./analyse-driveline.js";
import type { AnalysisInput } from "./input.js";

/** A value that only rounding separates from the exact one, in degrees. */
const ROUNDING = 1e-9;

const cross = (id: string): Joint => ({ id, kind: "cross" });

const twoPiece: Driveline = {
  id: "rear",
  joints: [cross("J1"), cross("J2"), cross("J3")],
  sections: [
    { id: "front", phasing: degreesToRadians(90), phasingMeasured: true },
    { id: "back", phasing: degreesToRadians(0), phasingMeasured: true },
  ],
};

const reading = (shaft: string, deg: number, place: "along" | "source-end" | "driven-end" = "along"): Reading => ({
  kind: "absolute",
  shaft,
  place,
  inclination: degreesToRadians(deg),
  zeroSign: 1,
  path: `gauging[0].readings[${shaft}:${place}]`,
});

const gauging = (readings: readonly Reading[], more: Partial<Gauging> = {}): Gauging => ({
  rideHeight: "normal",
  wheels: "on-ground",
  gauge: {
    resolution: degreesToRadians(0.1),
    accuracy: degreesToRadians(0.1),
    common: false,
    zeroCheck: [
      { value: degreesToRadians(0.1), path: "gauging[0].gauge.zeroCheck[0]" },
      { value: degreesToRadians(-0.1), path: "gauging[0].gauge.zeroCheck[1]" },
    ],
  },
  readings,
  headings: [],
  path: "gauging[0]",
  ...more,
});

/** Common practice, no source: the two-piece set with joints of 3.2, 0.5 and 3.0 degrees. */
const usual = [
  reading("source", 2.4),
  reading("front", 5.6, "source-end"),
  reading("front", 5.6, "driven-end"),
  reading("back", 5.1, "source-end"),
  reading("back", 5.1, "driven-end"),
  reading("driven", 2.1),
];

/** Headings measured well enough to leave them out of the question. */
const straight = ["source", "front", "back", "driven"].map((shaft) => ({
  kind: "angle" as const,
  shaft,
  heading: 0 as Radians,
  accuracy: degreesToRadians(0.05),
  path: "gauging[0].headings[0]",
}));

const input = (more: Partial<AnalysisInput> = {}): AnalysisInput => ({
  driveline: twoPiece,
  gauging: gauging(usual, { headings: straight }),
  limits: DEFAULT_LIMITS,
  maxShaftSpeed: rpm(3000),
  accepted: [],
  draws: 2000,
  seed: 1,
  path: "drivelines[0]",
  ...more,
});

const codes = (analysis: { readonly findings: readonly { readonly code: string }[] }): string[] =>
  analysis.findings.map(({ code }) => code);

describe("analysing a driveline", () => {
  test("gives the joint angles of the readings and the bench residual beside the exact answer", () => {
    const { joints, cancellation } = analyseDriveline(input());
    [3.2, 0.5, 3.0].forEach((angle, k) => {
      expect(Math.abs(radiansToDegrees((joints[k]?.operatingAngle?.value ?? NaN) as Radians) - angle)).toBeLessThan(ROUNDING);
    });
    expect(Math.abs(radiansToDegrees((cancellation.benchResidual?.value ?? NaN) as Radians) - 0.7)).toBeLessThan(ROUNDING);
    expect(cancellation.benchVerdict).toBe("acceptable");
    // cos(B_eq) = cos 3.2 cos 0.5 / cos 3.0 for the signs + + -, all in one plane.
    const exact = Math.acos((Math.cos(degreesToRadians(3.2)) * Math.cos(degreesToRadians(0.5))) / Math.cos(degreesToRadians(3)));
    expect(Math.abs((cancellation.equivalentAngle?.value ?? NaN) - exact)).toBeLessThan(1e-9);
  });

  test("is the same again for the same seed, and keeps its values for another", () => {
    const once = analyseDriveline(input());
    expect(analyseDriveline(input())).toEqual(once);
    const other = analyseDriveline(input({ seed: 2 }));
    expect(other.joints.map(({ operatingAngle }) => operatingAngle?.value)).toEqual(
      once.joints.map(({ operatingAngle }) => operatingAngle?.value),
    );
    expect(other.joints[0]?.operatingAngle?.low).not.toBe(once.joints[0]?.operatingAngle?.low);
  });

  test("holds every value inside its interval, and the interval at or above zero", () => {
    const angle = fc.double({ min: -8, max: 8, noNaN: true });
    fc.assert(
      fc.property(fc.tuple(angle, angle, angle, angle), fc.boolean(), ([a, b, c, d], headed) => {
        const readings = [reading("source", a), reading("front", b), reading("back", c), reading("driven", d)];
        const { joints, cancellation, motion } = analyseDriveline(
          input({ gauging: gauging(readings, headed ? { headings: straight } : {}), draws: 400 }),
        );
        const estimates = [
          ...joints.map(({ operatingAngle }) => operatingAngle),
          cancellation.equivalentAngle,
          cancellation.benchResidual,
          motion.transmissionErrorPeakToPeak,
          ...motion.coefficients.drive,
          ...motion.coefficients.coast,
        ];
        for (const estimate of estimates) {
          if (!estimate) continue;
          expect(estimate.low).toBeGreaterThanOrEqual(0);
          expect(estimate.low).toBeLessThanOrEqual(estimate.value);
          expect(estimate.high).toBeGreaterThanOrEqual(estimate.value);
          expect(estimate.u).toBeGreaterThan(0);
        }
      }),
      { numRuns: 40 },
    );
  });

  test("says nothing of a joint whose shaft was not read, and still judges the others", () => {
    const { joints, cancellation, motion } = analyseDriveline(input({ gauging: gauging(usual.slice(0, 5), { headings: straight }) }));
    expect(joints.map(({ verdict }) => verdict)).toEqual(["within", "uncertain", "not-gauged"]);
    expect(joints[2]?.operatingAngle).toBeNull();
    expect(cancellation.equivalentAngle).toBeNull();
    expect(cancellation.verdict).toBe("not-gauged");
    expect(motion.coefficients.driven).toBeNull();
    expect(motion.coefficients.drive.every((estimate) => estimate !== null)).toBe(true);
    expect(motion.coefficients.coast).toEqual([null, null]);
  });

  test("withholds every verdict where the wheels hang, and gives them when a person accepts that", () => {
    const hanging = gauging(usual, { wheels: "hanging", headings: straight });
    const refused = analyseDriveline(input({ gauging: hanging }));
    expect(refused.withheld).toBe(true);
    expect([...refused.joints.map(({ verdict }) => verdict), refused.cancellation.verdict, refused.motion.verdict]).toEqual(
      Array(5).fill("withheld"),
    );
    const accepted = analyseDriveline(input({ gauging: hanging, accepted: ["gauging.wheels-hanging"] }));
    expect(accepted.withheld).toBe(false);
    expect(codes(accepted)).toContain("decision.stop-accepted");
    expect(accepted.joints[0]?.verdict).toBe("within");
  });

  test("under a stop finding a joint that was not read stays not gauged: nothing is withheld where there is nothing", () => {
    const { joints, cancellation, motion, withheld } = analyseDriveline(
      input({ gauging: gauging(usual.slice(0, 5), { wheels: "hanging", headings: straight }) }),
    );
    expect(withheld).toBe(true);
    expect(joints.map(({ verdict }) => verdict)).toEqual(["withheld", "withheld", "not-gauged"]);
    expect([cancellation.verdict, motion.verdict]).toEqual(["not-gauged", "not-gauged"]);
  });

  test("finds a joint over its limit, one under the minimum, and cancellation that fails", () => {
    const readings = [reading("source", 0), reading("front", 9), reading("back", 9.1), reading("driven", 9.15)];
    const fine = {
      resolution: degreesToRadians(0.01),
      accuracy: degreesToRadians(0.01),
      common: false,
      zeroCheck: gauging([]).gauge.zeroCheck,
    };
    const exact = straight.map((heading) => ({ ...heading, accuracy: degreesToRadians(0.001) }));
    const analysis = analyseDriveline(input({ gauging: gauging(readings, { gauge: fine, headings: exact }) }));
    expect(analysis.joints.map(({ verdict }) => verdict)).toEqual(["over", "under", "under"]);
    expect(analysis.cancellation.verdict).toBe("over");
    expect(analysis.motion.verdict).toBe("over");
    for (const code of ["joint.over", "joint.under", "cancellation.over", "motion.driven-over"]) expect(codes(analysis)).toContain(code);
  });

  test("takes 3000 rpm where no speed is given, says so, and states every 500 rpm up to the highest", () => {
    const analysis = analyseDriveline(input({ maxShaftSpeed: null }));
    expect(codes(analysis)).toContain("vehicle.no-maximum-speed");
    expect(analysis.motion.speeds.map(({ shaftSpeed }) => shaftSpeed)).toEqual([500, 1000, 1500, 2000, 2500, 3000]);
    expect(analyseDriveline(input({ maxShaftSpeed: rpm(1600) })).motion.speeds.map(({ shaftSpeed }) => shaftSpeed)).toEqual([
      500, 1000, 1500, 1600,
    ]);
  });

  test("shares one answer between a first joint and the section it drives", () => {
    const { joints, motion } = analyseDriveline(input());
    const angle = joints[0]?.operatingAngle;
    const drive = motion.coefficients.drive[0];
    // w^2 sin B tan B is the coefficient to sixth order in B; at 3 degrees that is one part in a million.
    for (const end of ["value", "low", "high"] as const) {
      const B = angle?.[end] ?? NaN;
      expect(Math.abs((drive?.[end] ?? NaN) / (Math.sin(B) * Math.tan(B)) - 1)).toBeLessThan(1e-5);
    }
  });

  test("does not know the motion across an unknown phasing, nor beyond the angle of a flexible coupling", () => {
    const unknown = { ...twoPiece, sections: twoPiece.sections.map((section) => ({ ...section, phasing: null })) };
    const blind = analyseDriveline(input({ driveline: unknown }));
    expect(blind.cancellation.equivalentAngle).toBeNull();
    expect(blind.motion.coefficients.drive.map((estimate) => estimate === null)).toEqual([false, true]);
    expect(codes(blind)).toContain("driveline.phasing-unknown");
    // What is known of it would pass, but nobody knows the driven end.
    expect(blind.motion.verdict).toBe("not-gauged");
    expect(blind.sensitivity).toEqual([]);
    const soft: Driveline = {
      ...twoPiece,
      joints: [{ id: "J1", kind: "flexible", statedAngle: degreesToRadians(2) }, cross("J2"), cross("J3")],
    };
    const bent = analyseDriveline(input({ driveline: soft }));
    expect(bent.joints[0]?.verdict).toBe("over");
    expect(bent.motion.coefficients.driven).toBeNull();
    expect(bent.motion.coefficients.coast[0]).not.toBeNull();
  });

  test("asks for no phasing beside a ball joint where it changes nothing", () => {
    const sections = twoPiece.sections.map((section, s) => (s === 0 ? { ...section, phasing: null } : section));
    const joints: Joint[] = [{ id: "J1", kind: "ball" }, cross("J2"), cross("J3")];
    const outside = analyseDriveline(input({ driveline: { ...twoPiece, joints, sections } }));
    expect(outside.cancellation.equivalentAngle).not.toBeNull();
    expect(codes(outside)).not.toContain("driveline.arm-reference-missing");
    const between = analyseDriveline(
      input({ driveline: { ...twoPiece, joints: [cross("J1"), { id: "J2", kind: "ball" }, cross("J3")], sections } }),
    );
    expect(between.cancellation.equivalentAngle).toBeNull();
    expect(codes(between)).toContain("driveline.arm-reference-missing");
  });

  test.each([
    ["stands past a right angle", [reading("source", 50), reading("front", -50), reading("back", -50), reading("driven", -49)], 0.1],
    ["may stand past a right angle", [reading("source", 40), reading("front", -42), reading("back", -42), reading("driven", -41)], 10],
  ])("says nothing of a motion through a joint that %s, and every number is one", (_, readings, accuracyDeg) => {
    const gauge = { ...gauging([]).gauge, accuracy: degreesToRadians(accuracyDeg) };
    const { joints, cancellation, motion } = analyseDriveline(input({ gauging: gauging(readings, { gauge, headings: straight }) }));
    expect(joints[0]?.verdict).toBe("over");
    expect(cancellation.equivalentAngle).toBeNull();
    expect(motion.transmissionErrorPeakToPeak).toBeNull();
    expect(motion.coefficients.drive).toEqual([null, null]);
    expect(motion.coefficients.coast[1]).not.toBeNull();
    const numbers: number[] = [];
    JSON.stringify({ joints, cancellation, motion }, (_key, value: unknown) => {
      if (typeof value === "number") numbers.push(value);
      return value;
    });
    expect(numbers.filter((value) => !Number.isFinite(value))).toEqual([]);
  });

  test("asks to repeat a reading that the uncertain motion rests on", () => {
    // The first joint alone shakes its section to about the limit; the last joint rules the whole.
    const readings = [reading("source", 0), reading("front", 5.7), reading("back", 6.2), reading("driven", 15)];
    const { findings, sensitivity } = analyseDriveline(input({ gauging: gauging(readings, { headings: straight }) }));
    const uncertain = findings.find(({ params }) => params.of === "motion.drive-inertia-over" && params.section === "front");
    expect(["back", "driven"]).toContain(sensitivity[0]?.of);
    expect(["source", "front"]).toContain(uncertain?.params.repeat);
  });

  test("names the reading that adds most to what is left, shares adding up to one", () => {
    const { sensitivity } = analyseDriveline(input({ gauging: gauging(usual) }));
    expect(Math.abs(sensitivity.reduce((sum, { share }) => sum + share, 0) - 1)).toBeLessThan(ROUNDING);
    expect(sensitivity[0]?.of).toMatch(/^heading:/);
  });

  test("says where the bench rule passes what the exact answer fails", () => {
    const oneFiveFour = [reading("source", 0), reading("front", 1), reading("back", 6), reading("driven", 2)];
    const inLine = { ...twoPiece, sections: twoPiece.sections.map((section) => ({ ...section, phasing: 0 as Radians })) };
    const strict = { ...DEFAULT_LIMITS, equivalentAngle: { value: degreesToRadians(2), source: "test" } };
    const analysis = analyseDriveline(input({ driveline: inLine, gauging: gauging(oneFiveFour, { headings: straight }), limits: strict }));
    expect(analysis.cancellation.benchVerdict).toBe("met");
    expect(analysis.findings.find(({ code }) => code === "cancellation.bench-disagrees")?.severity).toBe("warn");
  });

  test("takes lateral offsets over a length as headings", () => {
    const headings = [
      {
        kind: "offset" as const,
        shaft: "front",
        lateral: metres(0.02),
        over: metres(1.18),
        accuracy: metres(0.002),
        path: "gauging[0].headings[0]",
      },
    ];
    const { shafts } = analyseDriveline(input({ gauging: gauging(usual, { headings }) }));
    const exact = Math.asin(0.02 / (1.18 * Math.cos(degreesToRadians(5.6))));
    expect(Math.abs((shafts[1]?.heading?.value ?? NaN) - exact)).toBeLessThan(1e-12);
  });
});
