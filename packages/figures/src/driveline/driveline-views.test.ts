import type { DrivelineAnalysis, Verdict } from "@halfturn/engine/analysis";
import { radiansToDegrees } from "@halfturn/engine/units";
import { describe, expect, test } from "vitest";
import { type Sample, samplePicture, TWO_PIECE } from "../sample-drivelines.test-support.js";
import { SAMPLE_LABELS } from "../sample-labels.test-support.js";
import { point } from "../svg/point.js";
import { textsOf } from "../svg-reading.test-support.js";
import { THEMES } from "../theme.js";
import { planView } from "./plan-view.js";
import { sideView } from "./side-view.js";
import { verdictMark } from "./verdict-mark.js";

const options = { labels: SAMPLE_LABELS };
const said = (svg: string): string[] => textsOf(svg).map(({ content }) => content);
const analysisOf = (sample: Sample): DrivelineAnalysis => samplePicture(sample).analysis as DrivelineAnalysis;
const withVerdicts = (verdicts: readonly Verdict[]) => {
  const picture = samplePicture(TWO_PIECE);
  const analysis = analysisOf(TWO_PIECE);
  return {
    ...picture,
    analysis: { ...analysis, joints: analysis.joints.map((joint, k) => ({ ...joint, verdict: verdicts[k] as Verdict })) },
  };
};

describe("side view", () => {
  test.each([720, 360])("writes every inclination and operating angle of the analysis, %i px wide", (width) => {
    const texts = said(sideView(samplePicture(TWO_PIECE), { ...options, width }));
    const analysis = analysisOf(TWO_PIECE);
    const angles = [
      ...analysis.shafts.map(({ inclination }) => inclination),
      ...analysis.joints.map(({ operatingAngle }) => operatingAngle),
    ];
    for (const angle of angles) {
      const start = `${radiansToDegrees(angle?.value as never).toFixed(2)}°`;
      expect(texts.some((text) => text.startsWith(start))).toBe(true);
    }
  });

  test("says which end is lower, without a sign", () => {
    const texts = said(
      sideView(samplePicture({ ...TWO_PIECE, shafts: [2, -3, 0, 1].map((inclinationDeg) => ({ inclinationDeg })) }), options),
    );
    expect(texts.filter((text) => text === SAMPLE_LABELS.drivenEndLower)).toHaveLength(2);
    expect(texts.filter((text) => text === SAMPLE_LABELS.sourceEndLower)).toHaveLength(1);
    expect(texts.filter((text) => text === SAMPLE_LABELS.level)).toHaveLength(1);
    expect(texts.some((text) => text.startsWith("-"))).toBe(false);
  });

  test("writes each verdict as a word, and withheld over all of them when the numbers may not be used", () => {
    const words = said(sideView(withVerdicts(["within", "over", "uncertain"]), options));
    for (const verdict of ["within", "over", "uncertain"] as const) expect(words).toContain(SAMPLE_LABELS.verdicts[verdict]);
    const picture = withVerdicts(["within", "over", "uncertain"]);
    const withheld = said(sideView({ ...picture, analysis: { ...picture.analysis, withheld: true } }, options));
    expect(withheld.filter((text) => text === SAMPLE_LABELS.verdicts.withheld)).toHaveLength(3);
    expect(withheld).not.toContain(SAMPLE_LABELS.verdicts.within);
  });

  test("says when it is not to scale, and by what factor the twin's angles are larger", () => {
    expect(said(sideView(samplePicture(TWO_PIECE), options))).toEqual(
      expect.arrayContaining([SAMPLE_LABELS.trueToScale, SAMPLE_LABELS.anglesLarger(3)]),
    );
    expect(said(sideView(samplePicture({ ...TWO_PIECE, lengthsM: [] }), options))).toContain(SAMPLE_LABELS.notToScale);
  });

  test("a rear shaft is seen from the vehicle's left, a front shaft from its right", () => {
    expect(said(sideView(samplePicture(TWO_PIECE), options))).toContain(SAMPLE_LABELS.seenFrom.left);
    expect(said(sideView(samplePicture({ ...TWO_PIECE, runs: "forward" }), options))).toContain(SAMPLE_LABELS.seenFrom.right);
  });

  test("an unmeasured shaft is dashed and said to be", () => {
    const svg = sideView(
      samplePicture({ ...TWO_PIECE, shafts: TWO_PIECE.shafts.map((shaft, k) => (k === 1 ? { inclinationDeg: null } : shaft)) }),
      options,
    );
    expect(said(svg)).toContain(SAMPLE_LABELS.notGauged);
    expect(svg).toContain('stroke-dasharray="6 4"');
    expect(sideView(samplePicture(TWO_PIECE), options)).not.toContain('stroke-dasharray="6 4"');
  });

  test("long names stand in full in the description", () => {
    const name = "Transfer case output toward the second rear axle";
    const svg = sideView(samplePicture({ ...TWO_PIECE, names: [name, "a", "b", "c"] }), options);
    expect(/<desc>([^<]*)<\/desc>/.exec(svg)?.[1]).toContain(name);
  });

  test("each kind of joint has a drawing of its own", () => {
    const shapes = (["cross", "double-cross", "ball", "flexible"] as const).map((kind) =>
      sideView(samplePicture({ kinds: [kind], shafts: [{ inclinationDeg: 0 }, { inclinationDeg: 0 }] }), options).replace(
        /<desc>.*<\/desc>/,
        "",
      ),
    );
    expect(new Set(shapes).size).toBe(4);
  });
});

describe("plan view", () => {
  test("turns headings into the vehicle's own left and right", () => {
    const shafts = [
      { inclinationDeg: 0 },
      { inclinationDeg: 0, headingDeg: 2 },
      { inclinationDeg: 0, headingDeg: -1 },
      { inclinationDeg: 0 },
    ];
    const sample: Sample = { ...TWO_PIECE, shafts, measured: [0, 1, 3] };
    const rear = said(planView(samplePicture(sample), options));
    expect(rear).toContain(SAMPLE_LABELS.towardSide.right);
    expect(rear).toContain(SAMPLE_LABELS.notMeasured);
    expect(rear).toContain(SAMPLE_LABELS.upperEdgeIs.right);
    const front = said(planView(samplePicture({ ...sample, runs: "forward" }), options));
    expect(front).toContain(SAMPLE_LABELS.towardSide.left);
    expect(front).toContain(SAMPLE_LABELS.upperEdgeIs.left);
  });
});

test("no two verdicts share a shape", () => {
  const shapes = (["within", "over", "under", "uncertain", "not-gauged", "withheld"] as const).map((verdict) =>
    verdictMark(verdict, THEMES.print)(point(0, 0)).replaceAll(/#[0-9a-f]{6}/g, ""),
  );
  expect(new Set(shapes).size).toBe(6);
});
