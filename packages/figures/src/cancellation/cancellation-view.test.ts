import { degreesToRadians, type Radians, radiansToDegrees } from "@halfturn/engine/units";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Sample, samplePicture, TWO_PIECE } from "../sample-drivelines.test-support.js";
import { SAMPLE_LABELS } from "../sample-labels.test-support.js";
import { distance, type Point } from "../svg/point.js";
import { textsOf } from "../svg-reading.test-support.js";
import { arrowPath } from "./arrow-path.js";
import { cancellationView } from "./cancellation-view.js";

const options = { labels: SAMPLE_LABELS };
const said = (svg: string): string[] => textsOf(svg).map(({ content }) => content);
const PLANAR: Sample = {
  kinds: ["cross", "cross", "cross"],
  shafts: [0, 3, 8, 12].map((inclinationDeg) => ({ inclinationDeg })),
  phasingsDeg: [0, 0],
};
/** Turning and adding a handful of vectors. */
const ROUNDING = 1e-12;
/** Six arrows too short to be drawn, 1e-8 each. */
const LEFT_OUT = 6e-8;

describe("cancellation view", () => {
  test("writes what the arrows leave beside the exact equivalent angle of the analysis", () => {
    const picture = samplePicture(TWO_PIECE);
    const exact = radiansToDegrees(picture.analysis?.cancellation.equivalentAngle?.value as never).toFixed(2);
    const texts = said(cancellationView(picture, options));
    expect(texts.some((text) => text.startsWith(`${SAMPLE_LABELS.exactEquivalentAngle}: ${exact}°`))).toBe(true);
    expect(texts.some((text) => text.startsWith(`${SAMPLE_LABELS.whatIsLeft}: `))).toBe(true);
  });

  test("3, 5 and 4 degrees in line: 0.12 degrees are left, by the arrows and exactly", () => {
    const texts = said(cancellationView(samplePicture(PLANAR), options));
    expect(texts).toContain(`${SAMPLE_LABELS.whatIsLeft}: 0.12°`);
    expect(texts.some((text) => text.startsWith(`${SAMPLE_LABELS.exactEquivalentAngle}: 0.12°`))).toBe(true);
  });

  test("on a phone an interval that has to be written out goes on in the next line, and none of it is cut", () => {
    const picture = samplePicture(PLANAR);
    const { analysis } = picture;
    if (!analysis) throw new Error("the sample is analysed");
    const [value, low, high] = [1.11, 0.43, 1.33].map(degreesToRadians) as [Radians, Radians, Radians];
    const lopsided = { ...analysis, cancellation: { ...analysis.cancellation, equivalentAngle: { value, u: value, low, high } } };
    const texts = said(cancellationView({ ...picture, analysis: lopsided }, { ...options, width: 320 }));
    expect(texts.join(" ")).toContain(`${SAMPLE_LABELS.exactEquivalentAngle}: 1.11° (0.43° to 1.33°)`);
    expect(texts.filter((text) => text.includes("…"))).toEqual([]);
  });

  test("a joint that turns evenly is listed as having no share", () => {
    const texts = said(cancellationView(samplePicture({ ...PLANAR, kinds: ["cross", "ball", "cross"] }), options));
    expect(texts.some((text) => text.endsWith(SAMPLE_LABELS.noContribution))).toBe(true);
  });

  test("says when there is nothing to draw and when it is not known", () => {
    expect(said(cancellationView(samplePicture({ ...PLANAR, kinds: ["ball", "ball", "ball"] }), options)).join(" ")).toContain(
      SAMPLE_LABELS.nothingToCancel,
    );
    expect(said(cancellationView(samplePicture({ ...PLANAR, phasingsDeg: [null, 0] }), options))).toContain(SAMPLE_LABELS.notKnown);
  });
});

describe("arrow path", () => {
  const vectors = fc.array(
    fc.record({ re: fc.double({ min: -1, max: 1, noNaN: true }), im: fc.double({ min: -1, max: 1, noNaN: true }) }),
    { minLength: 1, maxLength: 6 },
  );

  test("lays the arrows head to tail and keeps the length of their sum", () => {
    fc.assert(
      fc.property(vectors, (list) => {
        const path = arrowPath(list);
        if (!path) return;
        path.arrows.forEach(({ tail }, k) => {
          if (k > 0) expect(distance(tail, path.arrows[k - 1]?.tip as Point)).toBeLessThan(LEFT_OUT);
        });
        const sum = Math.hypot(...[list.reduce((total, { re }) => total + re, 0), list.reduce((total, { im }) => total + im, 0)]);
        expect(Math.abs(Math.hypot(path.end.x, path.end.y) - sum)).toBeLessThan(ROUNDING);
      }),
    );
  });

  test("knows arrows along one line from arrows in the plane", () => {
    expect(
      arrowPath([
        { re: 1, im: 0 },
        { re: -2, im: 0 },
      ])?.inLine,
    ).toBe(true);
    expect(
      arrowPath([
        { re: 1, im: 0 },
        { re: 0, im: 1 },
      ])?.inLine,
    ).toBe(false);
    expect(arrowPath([{ re: 0, im: 0 }])).toBeNull();
  });
});
