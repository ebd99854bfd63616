import { expect, test } from "vitest";
import { catalogueOf } from "./catalogues.js";
import { slipTravelText } from "./slip-travel-text.js";

test("a slip spline that moves says which way, also in inches; one that stands does not", () => {
  const say = (language: "en" | "es", units: "metric" | "us") =>
    [-5, -0.04, 12.7].map((mm) => slipTravelText(mm, catalogueOf(language, units)));
  expect(say("en", "metric")).toEqual(["5\u00a0mm inward", "0\u00a0mm", "12.7\u00a0mm outward"]);
  expect(say("en", "us")).toEqual(["0.197\u00a0in inward", "0\u00a0in", "0.5\u00a0in outward"]);
  expect(say("es", "us")).toEqual(["0,197\u00a0in hacia dentro", "0\u00a0in", "0,5\u00a0in hacia fuera"]);
});
