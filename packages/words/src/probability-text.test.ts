import { expect, test } from "vitest";
import { catalogues } from "./catalogues.js";
import { highestProbabilityText, probabilityText } from "./probability-text.js";

test("a probability is never said to be nought or certain", () => {
  const said = [0, 0.004, 0.005, 0.57, 0.994, 0.995, 1].map((probability) => probabilityText(probability, catalogues.en.numbers));
  expect(said).toEqual(["<\u00a01%", "<\u00a01%", "1%", "57%", "99%", ">\u00a099%", ">\u00a099%"]);
  expect(probabilityText(1, catalogues.es.numbers)).toBe(">\u00a099\u00a0%");
});

test("a highest probability is said with its sign, and never twice as a bound", () => {
  const said = [0, 0.57, 1].map((probability) => highestProbabilityText(probability, catalogues.en.numbers));
  expect(said).toEqual(["<\u00a01%", "≤\u00a057%", "≤\u00a0100%"]);
});
