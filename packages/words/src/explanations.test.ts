import { describe, expect, it } from "vitest";
import { benchTerms } from "./bench-terms.js";
import { catalogues } from "./catalogues.js";
import { numbersOf } from "./numbers/numbers.js";

const en = numbersOf("en");

describe("why bench rule and exact answer disagree", () => {
  it("writes the sum and the squares with their numbers", () => {
    const text = catalogues.en.explanations.bench({ anglesDeg: [3, 5, 4], signs: [1, -1, 1], benchDeg: 2, equivalentDeg: 0.12 });
    expect(text).toContain("3.00 − 5.00 + 4.00 = 2.00°");
    expect(text).toContain("3.00² − 5.00² + 4.00²");
    expect(text).toContain("0.12°");
  });

  it("turns a negative sum the right way round", () => {
    expect(benchTerms([1, 5], [1, -1], en)).toEqual({ plain: "−1.00 + 5.00", squared: "−1.00² + 5.00²" });
  });

  it("says when the rule does not apply", () => {
    expect(catalogues.en.explanations.bench({ anglesDeg: [], signs: null, benchDeg: null, equivalentDeg: 1 })).toMatch(/says nothing here/);
  });

  it("writes nothing where angles and signs do not match", () => {
    expect(benchTerms([1, 5], [1], en)).toBeNull();
    expect(benchTerms([1, 5], null, en)).toBeNull();
  });
});

describe("what to repeat", () => {
  const { repeat } = catalogues.en.phrases;
  it("names reading, zero or heading, and its share", () => {
    const name = (id: string): string =>
      id === "gauging[0].readings[2]" ? "the reading of Front section" : id === "front" ? "Front section" : id;
    expect(repeat({ of: "front", path: "gauging[0].readings[2]", share: 0.62 }, name)).toMatch(
      /take the reading of Front section again; it carries 62%/,
    );
    expect(repeat({ of: "zero", path: "gauging[0].gauge", share: 0.5 }, name)).toMatch(/turn-round check/);
    expect(repeat({ of: "heading:front", path: "drivelines[0]", share: 0.5 }, name)).toMatch(/Front section runs to one side/);
  });
});
