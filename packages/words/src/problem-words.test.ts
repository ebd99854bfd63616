import { describe, expect, it } from "vitest";
import { problemText } from "./catalogue.js";
import { catalogues } from "./catalogues.js";
import { numberMeant } from "./problem-words.js";

const deg = "gauging[0].readings[1].deg";

describe("numbers as they are noted on paper", () => {
  it.each([
    ["3,1", "3.1"],
    ["1.4°", "1.4"],
    [" 980 mm ", "980"],
    ["+2", "2"],
  ])("takes %j for %s", (written, meant) => {
    expect(numberMeant(written)).toBe(meant);
  });

  it.each(["", "O.8", "1,000,5", "1.4 in", "left"])("takes %j for no number", (written) => {
    expect(numberMeant(written)).toBeNull();
  });

  it("says what to write instead of a decimal comma", () => {
    const problem = { code: "wrong-type", path: deg, params: { expected: "number", got: "string", value: "3,1" } } as const;
    expect(problemText(catalogues.en, problem)).toMatch(/write 3\.1: a point, no quotes/);
    expect(problemText(catalogues.es, problem)).toMatch(/escriba 3\.1: con punto, sin comillas/);
  });

  it("asks for a word instead of a sign, but only where a size is asked for", () => {
    const of = (got: number, minimum: number) =>
      problemText(catalogues.en, { code: "out-of-range", path: deg, params: { of: "number", got, minimum, below: 90 } });
    expect(of(-3.1, 0)).toMatch(/never negative; write its size/);
    expect(of(-100, -90)).toMatch(/has to be at least -90/);
  });
});
