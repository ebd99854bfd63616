import { LANGUAGES } from "@halfturn/words";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { faults } from "../faults.test-support.js";
import { SAMPLE_LABELS } from "../sample-labels.test-support.js";
import { malformed, textsOf } from "../svg-reading.test-support.js";
import { THEMES, type ThemeName } from "../theme.js";
import { figureLabelsOf } from "../words/labels-of.js";
import { LEVELS, levelOf, levelRuns } from "./level-cells.js";
import { SAMPLE_VIBRATION } from "./sample-vibration.test-support.js";
import { vibrationMap } from "./vibration-map.js";
import type { VibrationPicture } from "./vibration-picture.js";

const options = { labels: SAMPLE_LABELS };
const amounts = fc.double({ min: 0, max: 1e3, noNaN: true });
const pictures: fc.Arbitrary<VibrationPicture> = fc
  .record({
    rows: fc.integer({ min: 1, max: 12 }),
    columns: fc.integer({ min: 1, max: 30 }),
    highest: fc.double({ min: 1, max: 60, noNaN: true }),
  })
  .chain(({ rows, columns, highest }) => {
    const orders = fc.double({ min: 0.15, max: highest, noNaN: true });
    const name = fc.oneof(fc.constantFrom("Wheel 1", "W".repeat(60)), fc.string({ unit: "grapheme", maxLength: 30 }));
    return fc.record({
      channel: name,
      quantity: fc.constantFrom("acceleration", "velocity", "displacement", "pressure", "share"),
      orders: fc.constant([0.15, highest] as const),
      times: fc.tuple(fc.constant(0), fc.double({ min: 0.01, max: 4000, noNaN: true })),
      rows: fc.constant(rows),
      columns: fc.constant(columns),
      amplitudes: fc.array(amounts, { minLength: rows * columns, maxLength: rows * columns }).map((list) => Float64Array.from(list)),
      marks: fc.array(
        fc.record({
          name,
          at: orders,
          amplitude: fc.option(amounts),
          share: fc.option(fc.double({ min: 0, max: 1, noNaN: true })),
          verdict: fc.boolean(),
        }),
        { maxLength: 16 },
      ),
      folded: fc.array(
        fc.record({ name, course: fc.array(fc.record({ time: fc.constant(0.005), at: orders }), { minLength: 2, maxLength: 4 }) }),
        { maxLength: 4 },
      ),
    });
  });

describe("vibration map", () => {
  test("no text overlaps another, all is inside, well-formed and made of numbers, whatever shook and however wide", () => {
    const widths = fc.constantFrom(320, 360, 414, 520, 640, 720, 1000);
    const themes = fc.constantFrom<ThemeName>("light", "dark", "print");
    fc.assert(
      fc.property(pictures, widths, themes, (picture, width, theme) => {
        expect(faults(vibrationMap(picture, { ...options, width, theme }))).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });

  test("draws every order where it lies on the axis, the verdict's in a colour of its own", () => {
    const svg = vibrationMap(SAMPLE_VIBRATION, options);
    const upright = [...svg.matchAll(/<path d="M([\d.]+) ([\d.]+)L\1 ([\d.]+)"[^>]*stroke="(#[0-9a-f]+)"[^>]*>/g)]
      .map(([, x, from, to, stroke]) => ({ x: Number(x), tall: Math.abs(Number(to) - Number(from)), stroke }))
      .filter(({ tall }) => tall > 200);
    expect(upright).toHaveLength(SAMPLE_VIBRATION.marks.length);
    // Places are written in hundredths of a pixel; the scale is read off the two lines that lie farthest apart.
    const [first, last] = [upright[0], upright.at(-1)] as [(typeof upright)[number], (typeof upright)[number]];
    const perOrder = (last.x - first.x) / (2 - 0.27);
    for (const [k, { at }] of SAMPLE_VIBRATION.marks.entries())
      expect(Math.abs((upright[k]?.x ?? 0) - first.x - (at - 0.27) * perOrder)).toBeLessThan(0.05);
    expect(upright.map(({ stroke }) => stroke === THEMES.light.bad)).toEqual(SAMPLE_VIBRATION.marks.map(({ verdict }) => verdict));
  });

  test("lists orders with what they explain, and those that fold back", () => {
    const said = textsOf(vibrationMap(SAMPLE_VIBRATION, { ...options, width: 1000 })).map(({ content }) => content);
    expect(said).toEqual(
      expect.arrayContaining([
        "Shaft 1",
        "0.98 m/s²",
        "explains 72 %",
        "the verdict",
        "0.030 m/s²",
        "Shaft 4",
        "folded back: where it would show",
      ]),
    );
  });

  test("draws a curve only as far as it lies on the map", () => {
    const course = [0, 10, 20, 30, 40].map((time) => ({ time, at: time === 20 ? 9 : 2 }));
    const pieces = [
      ...vibrationMap({ ...SAMPLE_VIBRATION, folded: [{ name: "Fan 1", course }] }, options).matchAll(/<path [^>]*stroke-dasharray="7 4"/g),
    ];
    expect(pieces).toHaveLength(2);
  });

  test("says that shares of full scale are none of m/s²", () => {
    const svg = vibrationMap({ ...SAMPLE_VIBRATION, quantity: "share", marks: [] }, options);
    expect(svg).toContain("of full scale");
    expect(svg).not.toContain("m/s²");
  });

  test.each([
    ["acceleration", "Darkest: from 0.50 m/s²"],
    ["velocity", "Darkest: from 500.0 mm/s"],
    ["displacement", "Darkest: from 500.0 mm"],
    ["pressure", "Darkest: from 0.50 Pa"],
    ["share", "Darkest: from 0.50 of full scale"],
  ] as const)("names the unit of what the channel measures: %s", (quantity, words) => {
    const loudest = { ...SAMPLE_VIBRATION, quantity, amplitudes: SAMPLE_VIBRATION.amplitudes.map((_, k) => (k === 0 ? 1 : 0.01)) };
    const said = textsOf(vibrationMap(loudest, { ...options, width: 1000 })).map(({ content }) => content.replaceAll("\u00a0", " "));
    expect(said).toContainEqual(expect.stringMatching(new RegExp(`^${words};`)));
  });

  test("what a user typed stays text", () => {
    const svg = vibrationMap({ ...SAMPLE_VIBRATION, channel: `<script>alert("1")</script>&'\u0000` }, options);
    expect([faults(svg), malformed(svg)]).toEqual([[], null]);
    expect(svg).not.toContain("<script");
  });

  test.each(["light", "dark", "print"] as const)("uses the colours of its theme only: %s", (theme) => {
    const allowed = new Set<string>(Object.values(THEMES[theme]).flat());
    const used = [...vibrationMap(SAMPLE_VIBRATION, { ...options, theme }).matchAll(/#[0-9a-f]{6}/g)].map(([colour]) => colour);
    expect(used.filter((colour) => !allowed.has(colour))).toEqual([]);
  });

  test.each(LANGUAGES)("%s: nothing is cut, on a telephone or wider", (language) => {
    for (const width of [360, 720]) {
      const svg = vibrationMap(SAMPLE_VIBRATION, { labels: figureLabelsOf(language), width });
      expect(faults(svg)).toEqual([]);
      expect(textsOf(svg).filter(({ content }) => content.endsWith("…"))).toEqual([]);
    }
  });
});

describe("shades", () => {
  test("halve from one to the next, and end", () => {
    expect([1, 0.51, 0.5, 0.26, 0.1, 0.04, 0.03, 0].map((amplitude) => levelOf(amplitude, 1))).toEqual([0, 0, 1, 1, 3, 4, null, null]);
    expect(levelOf(1, 0)).toBe(null);
  });

  test("runs cover each place that has a shade, once", () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 12, maxLength: 12 }), (list) => {
        const shades = new Array<number | null>(12).fill(null);
        for (const { row, from, to, level } of levelRuns(Float64Array.from(list), 4, 1))
          for (let column = from; column < to; column++) {
            expect(shades[row * 4 + column]).toBe(null);
            shades[row * 4 + column] = level;
          }
        expect(shades).toEqual(list.map((amplitude) => levelOf(amplitude, 1)));
        expect(shades.every((level) => level === null || (level >= 0 && level < LEVELS))).toBe(true);
      }),
    );
  });
});
