import { expect, test } from "vitest";
import { colourAt, RANGE_DB, shareOf } from "./colour-map.js";

/** Relative luminance. Source: W3C, WCAG 2.2, definition of relative luminance. */
const luminance = (rgb: readonly number[]): number => {
  const [r = 0, g = 0, b = 0] = rgb.map((value) => (value / 255 <= 0.04045 ? value / 255 / 12.92 : ((value / 255 + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};
const SHARES = Array.from({ length: 41 }, (_, k) => k / 40);

test("stronger is lighter on a dark screen and darker on a light one, all the way", () => {
  const [dark, light] = [
    SHARES.map((share) => luminance(colourAt(share, "dark"))),
    SHARES.map((share) => luminance(colourAt(share, "light"))),
  ];
  expect(dark).toEqual(dark.toSorted((a, b) => a - b));
  expect(light).toEqual(light.toSorted((a, b) => b - a));
});

test("what is out of range takes the colour of its end", () => {
  expect(colourAt(-1, "dark")).toEqual(colourAt(0, "dark"));
  expect(colourAt(2, "light")).toEqual(colourAt(1, "light"));
});

test("its decibels lie evenly between faint and strong", () => {
  const down = (decibels: number): number => 10 ** (-decibels / 20);
  const shares = [shareOf(1, 1), shareOf(down(RANGE_DB / 2), 1), shareOf(down(RANGE_DB + 1), 1), shareOf(0, 1), shareOf(1, 0)];
  // Through a power of ten and its logarithm and back: a few roundings.
  for (const [k, share] of [1, 0.5, 0, 0, 0].entries()) expect(Math.abs((shares[k] ?? Number.NaN) - share)).toBeLessThan(1e-12);
});
