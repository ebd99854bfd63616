import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { DrivelinePicture } from "./driveline/driveline-picture.js";
import { faults } from "./faults.test-support.js";
import type { FigureOptions } from "./figure-options.js";
import { samples } from "./sample-arbitraries.test-support.js";
import { samplePicture, TWO_PIECE } from "./sample-drivelines.test-support.js";
import { ALL_FIGURES } from "./sample-figures.test-support.js";
import { SAMPLE_LABELS } from "./sample-labels.test-support.js";
import { malformed } from "./svg-reading.test-support.js";
import { THEMES, type ThemeName } from "./theme.js";

const options = (over: Partial<FigureOptions> = {}): FigureOptions => ({ labels: SAMPLE_LABELS, ...over });
const widths = fc.constantFrom(320, 360, 414, 520, 640, 720, 1000);
const themes = fc.constantFrom<ThemeName>("light", "dark", "print");

describe.each(Object.entries(ALL_FIGURES))("%s", (_name, draw) => {
  test("no text overlaps another, all is inside, well-formed and made of numbers, whatever the driveline and width", () => {
    fc.assert(
      fc.property(samples, widths, themes, (sample, width, theme) => {
        expect(faults(draw(samplePicture(sample), options({ width, theme })))).toEqual([]);
      }),
      { numRuns: 250 },
    );
  });

  test("same input, same bytes", () => {
    expect(draw(samplePicture(TWO_PIECE), options())).toBe(draw(samplePicture(TWO_PIECE), options()));
  });

  test("draws without results", () => {
    const picture: DrivelinePicture = { ...samplePicture(TWO_PIECE), analysis: null };
    expect(faults(draw(picture, options()))).toEqual([]);
  });

  test("draws shafts in one straight line, and estimates that are no numbers", () => {
    const straight = samplePicture({ ...TWO_PIECE, shafts: TWO_PIECE.shafts.map(() => ({ inclinationDeg: 0, headingDeg: 0 })) });
    expect(faults(draw(straight, options()))).toEqual([]);
    const analysis = straight.analysis as NonNullable<DrivelinePicture["analysis"]>;
    const broken = { value: Number.NaN, u: Number.NaN, low: Number.NaN, high: Number.NaN };
    const picture: DrivelinePicture = {
      ...straight,
      analysis: {
        ...analysis,
        shafts: analysis.shafts.map((shaft) => ({ ...shaft, inclination: broken, heading: broken })),
        joints: analysis.joints.map((joint) => ({ ...joint, operatingAngle: broken })),
        cancellation: { ...analysis.cancellation, equivalentAngle: broken, bestPhasing: { "section-1": Number.NaN } },
        motion: {
          ...analysis.motion,
          secondOrder: broken,
          speeds: analysis.motion.speeds.map((speed) => ({ ...speed, drivenAcceleration: broken })),
        },
      },
    };
    expect(faults(draw(picture, options()))).toEqual([]);
  });

  test("what a user typed stays text", () => {
    const hostile = `<script>alert("1")</script>&'\u0000\ud800`;
    const names = TWO_PIECE.shafts.map(() => hostile);
    const svg = draw(
      samplePicture({ ...TWO_PIECE, names, jointIds: [hostile, `${hostile}2`, `${hostile}3`], supports: [] }),
      options({ width: 1000 }),
    );
    expect(malformed(svg)).toBeNull();
    expect(svg).not.toContain("<script");
    expect(svg).not.toContain("\u0000");
  });

  test("tells a reader who does not see it what it is", () => {
    const svg = draw(samplePicture(TWO_PIECE), options());
    expect(svg).toMatch(/^<svg [^>]*role="img"/);
    expect(svg).toMatch(/<title>[^<]+<\/title><desc>[^<]{20,}<\/desc>/);
  });

  test("needs nothing that a plain renderer lacks", () => {
    const svg = draw(samplePicture(TWO_PIECE), options());
    expect(svg).not.toMatch(/style=|class=|var\(|foreignObject|<use|<defs|url\(|transform=|currentColor/);
  });

  test.each(["light", "dark", "print"] as const)("uses the colours of its theme only: %s", (theme) => {
    const allowed = new Set<string>(Object.values(THEMES[theme]).flat());
    const used = [...draw(samplePicture(TWO_PIECE), options({ theme })).matchAll(/#[0-9a-f]{6}/g)].map(([colour]) => colour);
    expect(used.filter((colour) => !allowed.has(colour))).toEqual([]);
  });
});
