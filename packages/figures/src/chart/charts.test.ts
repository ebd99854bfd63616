import type { DrivelineAnalysis } from "@halfturn/engine/analysis";
import { DEFAULT_LIMITS } from "@halfturn/engine/limits";
import { radiansToDegrees } from "@halfturn/engine/units";
import { describe, expect, test } from "vitest";
import { samplePicture, TWO_PIECE } from "../sample-drivelines.test-support.js";
import { SAMPLE_LABELS } from "../sample-labels.test-support.js";
import { textsOf } from "../svg-reading.test-support.js";
import { THEMES } from "../theme.js";
import { accelerationChart } from "./acceleration-chart.js";
import { transmissionErrorChart } from "./transmission-error-chart.js";

const options = { labels: SAMPLE_LABELS };
const said = (svg: string): string[] => textsOf(svg).map(({ content }) => content);

/** Points of the curve drawn in ink at this width, read back from its path. */
function inkCurve(svg: string, width: string): { x: number; y: number }[] {
  const path = [...svg.matchAll(/<path d="([^"]*)"[^>]*>/g)].find(([tag]) =>
    tag.includes(`stroke="${THEMES.light.ink}" stroke-width="${width}"`),
  );
  return (path?.[1] ?? "")
    .split(/[ML]/)
    .filter(Boolean)
    .map((pair) => {
      const [x, y] = pair
        .trim()
        .split(/[\s,]+/)
        .map(Number);
      return { x: x as number, y: y as number };
    });
}

describe("acceleration chart", () => {
  test("names every line at its end with the value at the highest speed, and every limit with its own", () => {
    const picture = samplePicture(TWO_PIECE);
    const texts = said(accelerationChart(picture, DEFAULT_LIMITS, options));
    const last = (picture.analysis as DrivelineAnalysis).motion.speeds.at(-1);
    expect(texts).toContain(last?.drivenAcceleration?.value.toFixed(0));
    for (const { acceleration } of [...(last?.drive ?? []), ...(last?.coast ?? [])]) {
      expect(texts.some((text) => text.startsWith(`${acceleration?.value.toFixed(0)} `))).toBe(true);
    }
    expect(texts).toEqual(expect.arrayContaining(["300 high", "400 limit", "1000 limit", "500 limit"]));
  });

  test("takes the limits that it is given", () => {
    const limits = { ...DEFAULT_LIMITS, drivenAccelerationOver: { value: 777 as never, source: "test" } };
    expect(said(accelerationChart(samplePicture(TWO_PIECE), limits, options))).toContain("777 limit");
  });

  test("says what is not known", () => {
    const texts = said(accelerationChart(samplePicture({ ...TWO_PIECE, phasingsDeg: [null, 0] }), DEFAULT_LIMITS, options));
    expect(texts).toContain(`${SAMPLE_LABELS.drivenEnd}: ${SAMPLE_LABELS.notKnown}`);
  });
});

describe("transmission error chart", () => {
  test("repeats every half turn and swings by the peak to peak of the analysis", () => {
    const picture = samplePicture(TWO_PIECE);
    const svg = transmissionErrorChart(picture, options);
    const curve = inkCurve(svg, "2.5");
    expect(curve).toHaveLength(181);
    // Coordinates are written in hundredths of a pixel.
    expect(Math.abs((curve[0]?.y ?? 0) - (curve[90]?.y ?? 1))).toBeLessThan(0.011);
    const axis = textsOf(svg)
      .filter(({ content }) => /^-?0\.\d+$/.test(content))
      .map(({ content, box }) => ({ value: Number(content), y: (box.top + box.bottom) / 2 }));
    const [a, b] = [axis[0], axis.at(-1)] as [{ value: number; y: number }, { value: number; y: number }];
    const perPixel = Math.abs((a.value - b.value) / (a.y - b.y));
    const swing = (Math.max(...curve.map(({ y }) => y)) - Math.min(...curve.map(({ y }) => y))) * perPixel;
    const expected = radiansToDegrees(picture.analysis?.motion.transmissionErrorPeakToPeak?.value as never);
    // Samples two degrees apart miss a peak by up to 1 - cos 2 degrees of the amplitude, and a pixel's hundredth at each end.
    expect(Math.abs(swing - expected)).toBeLessThan(0.001 * expected + 0.02 * perPixel);
  });

  test("notes the part that comes twice a turn", () => {
    const picture = samplePicture(TWO_PIECE);
    const second = radiansToDegrees(picture.analysis?.motion.secondOrder?.value as never).toFixed(2);
    expect(
      said(transmissionErrorChart(picture, { ...options, width: 1000 })).some((text) =>
        text.includes(`${SAMPLE_LABELS.twiceATurn} ${second}°`),
      ),
    ).toBe(true);
  });

  test("draws no curve whose phasing is not known", () => {
    const texts = said(transmissionErrorChart(samplePicture({ ...TWO_PIECE, phasingsDeg: [null, 0] }), options));
    expect(texts).toContain("Front section");
    expect(texts).not.toContain("Back section");
  });
});
