import { LANGUAGES } from "@halfturn/words";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { exampleOrders } from "../example-figures.test-support.js";
import { faults } from "../faults.test-support.js";
import { SAMPLE_LABELS } from "../sample-labels.test-support.js";
import { LOW_RANGE } from "../sample-orders.test-support.js";
import { malformed, textsOf } from "../svg-reading.test-support.js";
import { THEMES, type ThemeName } from "../theme.js";
import { figureLabelsOf } from "../words/labels-of.js";
import { orderLines } from "./order-lines.js";
import type { OrderPicture } from "./order-picture.js";

const options = { labels: SAMPLE_LABELS };
const part = (name: string, value: number, orders: readonly number[]) => ({
  name,
  rate: { value, low: value * 0.99, high: value * 1.01 },
  orders,
});
const PICTURE: OrderPicture = {
  speedKmh: 90,
  complaintKmh: [80, 100],
  parts: [part("Wheel", 10, [1, 2, 3]), part("Shaft", 40, [1, 2, 4]), part("Engine", 40, [0.5, 1, 3])],
};

const speeds = fc.double({ min: 1, max: 300, noNaN: true });
const names = fc.oneof(
  fc.constantFrom("Wheel", "Überlängenzwischenwellenabschnitt", "中间轴段", "W".repeat(60)),
  fc.string({ unit: "grapheme", maxLength: 40 }),
);
const rates = fc.double({ min: 0.05, max: 200, noNaN: true });
const pictures: fc.Arbitrary<OrderPicture> = fc.record({
  speedKmh: fc.oneof(speeds, fc.integer({ min: 1, max: 300 })),
  complaintKmh: fc.option(
    fc
      .tuple(fc.double({ min: 0, max: 400, noNaN: true }), fc.double({ min: 0, max: 400, noNaN: true }))
      .map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const),
  ),
  parts: fc.array(
    fc
      .record({
        name: names,
        value: rates,
        share: fc.double({ min: 0, max: 0.3, noNaN: true }),
        orders: fc.array(fc.constantFrom(0.5, 1, 1.5, 2, 3, 4, 12), { maxLength: 4 }),
      })
      .map(({ name, value, share, orders }) => ({ name, rate: { value, low: value * (1 - share), high: value * (1 + share) }, orders })),
    { maxLength: 12 },
  ),
});

describe("order lines", () => {
  test("in miles an hour the lines are the same lines, and every speed is said in miles", () => {
    const [metric, miles] = [
      orderLines(PICTURE, options),
      orderLines(PICTURE, { labels: { ...SAMPLE_LABELS, numbers: { ...SAMPLE_LABELS.numbers, speedUnit: "mph" } } }),
    ];
    const said = textsOf(miles).map(({ content }) => content);
    expect(said.join(" ")).not.toContain("km/h");
    // 90, 80 and 100 km/h, one mile being 1.609344 km.
    for (const speed of ["55.9 mph", "49.7", "62.1 mph"]) expect(said.join(" ")).toContain(speed);
    const frequencies = (svg: string): readonly string[] =>
      textsOf(svg)
        .map(({ content }) => content)
        .filter((text) => /^[0-9.]+ (Wheel|Shaft|Engine)/.test(text));
    expect(frequencies(miles)).toEqual(frequencies(metric));
    expect(frequencies(miles)).toHaveLength(9);
  });

  test.each(LANGUAGES)("%s: the axis and the speeds are in the units of the reader, whole where they were meant whole", (language) => {
    const picture = { ...PICTURE, speedKmh: 65 * 1.609344, complaintKmh: null };
    const said = (units: "metric" | "us"): string =>
      textsOf(orderLines(picture, { labels: figureLabelsOf(language, units) }))
        .map(({ content }) => content)
        .join(" ");
    expect(said("us")).toMatch(/, mph/);
    expect(said("us")).toContain(" 65 mph");
    expect(said("us")).not.toContain("km/h");
    expect(said("metric")).toMatch(/, km\/h/);
    expect(said("metric")).not.toContain("mph");
  });

  test("no text overlaps another, all is inside, well-formed and made of numbers, whatever turns and however wide", () => {
    const widths = fc.constantFrom(320, 360, 414, 520, 640, 720, 1000);
    const themes = fc.constantFrom<ThemeName>("light", "dark", "print");
    fc.assert(
      fc.property(pictures, widths, themes, (picture, width, theme) => {
        expect(faults(orderLines(picture, { ...options, width, theme }))).toEqual([]);
      }),
      { numRuns: 250 },
    );
  });

  test("names every order at the end of its line, with its frequency at the marked speed", () => {
    const texts = textsOf(orderLines(PICTURE, options)).map(({ content }) => content);
    const expected = ["10.0 Wheel 1", "20.0 Wheel 2", "30.0 Wheel 3", "40.0 Shaft 1", "80.0 Shaft 2", "160 Shaft 4"];
    expect(texts).toEqual(expect.arrayContaining([...expected, "20.0 Engine 0.5", "40.0 Engine 1", "120 Engine 3"]));
  });

  test("marks each frequency where its line crosses the speed: on a straight line from standstill", () => {
    const svg = orderLines(PICTURE, options);
    const dots = [...svg.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)"/g)].map(([, x, y]) => ({ x: Number(x), y: Number(y) }));
    expect(dots).toHaveLength(9);
    const upright = new RegExp(`<path d="M([\\d.]+) ([\\d.]+)L\\1 ([\\d.]+)"[^>]*stroke="${THEMES.light.ink}"`).exec(svg);
    const [x, bottom] = [Number(upright?.[1]), Math.max(Number(upright?.[2]), Number(upright?.[3]))];
    expect(dots.every((dot) => dot.x === x)).toBe(true);
    // Heights over the axis are as the frequencies: 10, 20, 30, 40, ... of the first.
    const heights = dots.map(({ y }) => bottom - y);
    const frequencies = [10, 20, 30, 40, 80, 160, 20, 40, 120];
    // Coordinates are written in hundredths of a pixel, and the unit here is read off the tallest.
    const unit = (heights[5] as number) / 160;
    expect(heights.filter((height, k) => Math.abs(height - (frequencies[k] as number) * unit) > 0.03)).toEqual([]);
  });

  test("shades the complaint's speeds and says so, or does neither", () => {
    const bands = (picture: OrderPicture) => [...orderLines(picture, options).matchAll(/<rect [^>]*fill-opacity/g)].length;
    const says = (picture: OrderPicture) => /Shaded: the complaint, 80 to 100 km\/h/.test(orderLines(picture, options));
    expect([bands(PICTURE), says(PICTURE)]).toEqual([1, true]);
    expect([bands({ ...PICTURE, complaintKmh: null }), says({ ...PICTURE, complaintKmh: null })]).toEqual([0, false]);
  });

  test("leaves out what is no number, and what a user typed stays text", () => {
    const hostile = `<script>alert("1")</script>&'\u0000\ud800`;
    const odd = { ...PICTURE, parts: [part(hostile, 10, [1]), part("Engine", Number.NaN, [1])] };
    const svg = orderLines(odd, { ...options, width: 1000 });
    expect([faults(svg), malformed(svg)]).toEqual([[], null]);
    for (const gone of ["<script", "\u0000", "Engine"]) expect(svg).not.toContain(gone);
    expect(faults(orderLines({ ...PICTURE, parts: [] }, options))).toEqual([]);
  });

  test("tells a reader who does not see it what it is, and needs nothing that a plain renderer lacks", () => {
    const svg = orderLines(PICTURE, options);
    expect(svg).toMatch(/^<svg [^>]*role="img"/);
    expect(svg).toMatch(/<desc>[^<]*90 km\/h[^<]*Shaft 2: 80\.0 Hz/);
    expect(svg).not.toMatch(/style=|class=|var\(|foreignObject|<use|<defs|url\(|transform=|currentColor/);
    expect(orderLines(PICTURE, options)).toBe(svg);
  });

  test.each(["light", "dark", "print"] as const)("uses the colours of its theme only: %s", (theme) => {
    const allowed = new Set<string>(Object.values(THEMES[theme]).flat());
    const used = [...orderLines(PICTURE, { ...options, theme }).matchAll(/#[0-9a-f]{6}/g)].map(([colour]) => colour);
    expect(used.filter((colour) => !allowed.has(colour))).toEqual([]);
  });

  test.each(LANGUAGES)("%s: nothing of an ordinary vehicle is cut, on a telephone or wider", (language) => {
    const picture = exampleOrders(LOW_RANGE, 105, language);
    for (const width of [360, 720]) {
      const svg = orderLines(picture, { labels: figureLabelsOf(language), width });
      expect(faults(svg)).toEqual([]);
      expect(textsOf(svg).filter(({ content }) => content.endsWith("…"))).toEqual([]);
    }
  });

  test("takes rates, short names, labels of accessories and the complaint from the case", () => {
    const { speedKmh, complaintKmh, parts } = exampleOrders(LOW_RANGE, 70, "en");
    expect([speedKmh, complaintKmh]).toEqual([70, [60, 80]]);
    expect(parts.map(({ name, orders }) => [name, orders])).toEqual([
      ["Wheel", [1, 2, 3]],
      ["Shaft", [1, 2, 4]],
      ["Transfer shaft", [1, 2, 4]],
      ["Engine", [0.5, 1, 3]],
      ["Fan", [1]],
    ]);
    for (const { rate } of parts) expect(rate.low < rate.value && rate.value < rate.high).toBe(true);
    const [wheel, shaft] = parts;
    // One rounding of the product.
    expect(Math.abs((shaft?.rate.value ?? 0) / (wheel?.rate.value ?? 1) - 4.1)).toBeLessThan(1e-12);
  });
});
