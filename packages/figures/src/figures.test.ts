import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { DrivelinePicture } from "./driveline/driveline-picture.js";
import type { FigureOptions } from "./figure-options.js";
import { samples } from "./sample-arbitraries.test-support.js";
import { samplePicture, TWO_PIECE } from "./sample-drivelines.test-support.js";
import { ALL_FIGURES } from "./sample-figures.test-support.js";
import { SAMPLE_LABELS } from "./sample-labels.test-support.js";
import { intersects } from "./svg/text.js";
import { drawnPlaces, malformed, textsOf, viewBoxOf } from "./svg-reading.test-support.js";
import { THEMES, type ThemeName } from "./theme.js";

/** Coordinates are written in hundredths, so two boxes that touch may seem to overlap by one of them. */
const ROUNDING = 0.011;
const options = (over: Partial<FigureOptions> = {}): FigureOptions => ({ labels: SAMPLE_LABELS, ...over });
const widths = fc.constantFrom(320, 360, 414, 520, 640, 720, 1000);
const themes = fc.constantFrom<ThemeName>("light", "dark", "print");

/** Every reason why a figure would not do. */
function faults(svg: string): string[] {
  const found: string[] = [];
  const bounds = viewBoxOf(svg);
  const texts = textsOf(svg);
  texts.forEach(({ content, box, size }, k) => {
    if (size < 12) found.push(`text of ${size} px: ${content}`);
    if (box.left < -ROUNDING || box.right > bounds.right + ROUNDING || box.top < 0 || box.bottom > bounds.bottom)
      found.push(`outside: ${content}`);
    for (const other of texts.slice(k + 1)) {
      const shrunk = { left: box.left + ROUNDING, right: box.right - ROUNDING, top: box.top + ROUNDING, bottom: box.bottom - ROUNDING };
      if (intersects(shrunk, other.box)) found.push(`overlap: ${content} | ${other.content}`);
    }
  });
  for (const { x, y } of drawnPlaces(svg)) {
    if (x < -ROUNDING || y < -ROUNDING || x > bounds.right + ROUNDING || y > bounds.bottom + ROUNDING)
      found.push(`drawn outside: ${x} ${y}`);
  }
  if (/NaN|Infinity|undefined|null|\[object/.test(svg)) found.push("no number");
  const xml = malformed(svg);
  if (xml) found.push(xml);
  return found;
}

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
