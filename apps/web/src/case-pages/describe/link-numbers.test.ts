import { expect, test } from "vitest";
import { linkNumbers, linksOf } from "./link-numbers.js";

const links = {
  kind: "links",
  lower: { frameForwardMm: 620, frameUpMm: 40, axleForwardMm: 0, axleUpMm: -80 },
  upper: { frameForwardMm: 480, frameUpMm: 190, axleForwardMm: -20, axleUpMm: 150, "x-bush": "new" },
} as const;

test("eight numbers and back, with what nobody asked about", () => {
  const numbers = linkNumbers(links);
  expect(Object.values(numbers)).toEqual([620, 40, 0, -80, 480, 190, -20, 150]);
  expect(linksOf(numbers, links)).toEqual(links);
  expect(linksOf({ ...numbers, "upper.axleUpMm": 160 }, undefined).upper).toEqual({
    frameForwardMm: 480,
    frameUpMm: 190,
    axleForwardMm: -20,
    axleUpMm: 160,
  });
});
