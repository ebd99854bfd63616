import { expect, test } from "vitest";
import { catalogues } from "./catalogues.js";
import { probabilityText } from "./probability-text.js";

test("a probability is never said to be nought or certain", () => {
  const said = [0, 0.004, 0.005, 0.57, 0.994, 0.995, 1].map((probability) => probabilityText(probability, catalogues.en.numbers));
  expect(said).toEqual(["< 1%", "< 1%", "1%", "57%", "99%", "> 99%", "> 99%"]);
  expect(probabilityText(1, catalogues.es.numbers)).toBe("> 99 %");
});
