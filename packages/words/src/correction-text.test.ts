import { describe, expect, it } from "vitest";
import { catalogues } from "./catalogues.js";
import { COVERED_CHANGE_PROBLEMS, SAMPLE_CHANGE_PROBLEMS, SAMPLE_NAMES } from "./correction-strings.test-support.js";
import { changeProblemText, correctionText } from "./correction-text.js";
import { LANGUAGES } from "./language.js";

describe("corrections in words", () => {
  it("has a sample change problem of every code", () => {
    expect(SAMPLE_CHANGE_PROBLEMS.map(({ code }) => code).toSorted()).toEqual(COVERED_CHANGE_PROBLEMS.toSorted());
  });

  it.each(LANGUAGES)("%s says a change problem on one line", (language) => {
    for (const problem of SAMPLE_CHANGE_PROBLEMS) expect(changeProblemText(catalogues[language], problem)).toMatch(/^[^\n]+$/);
  });

  it("says the sign of an amount in words of the vehicle", () => {
    const { change } = correctionText(catalogues.en, SAMPLE_NAMES);
    expect(change({ adjuster: "wedge", amount: -2.5, unit: "deg" }, "axle-wedge")).toBe("wedge: 2.5° pinion nose down");
    expect(change({ adjuster: "plate", amount: 6, unit: "mm" }, "support-drop")).toBe("plate: 6\u00a0mm lower");
    expect(change({ adjuster: "slot", amount: -4, unit: "mm" }, "support-shift")).toBe("slot: 4\u00a0mm to the right");
    expect(change({ adjuster: "turn", amount: -1, unit: "step" }, "rephase")).toBe("turn: 1 spline step anticlockwise");
  });

  it("quotes why a number cannot be read, and what to write", () => {
    const unreadable = SAMPLE_CHANGE_PROBLEMS.find(({ code }) => code === "amount-unreadable");
    expect(unreadable && changeProblemText(catalogues.en, unreadable)).toBe(
      '"2.5.1" cannot be read: it has two decimal signs; write wedge=2deg',
    );
  });

  it.each([
    [8, 3, "moves 8\u00a0mm outward at most and 3\u00a0mm inward at most"],
    [8, 0, "moves outward only, by 8\u00a0mm at most"],
    [8, -2, "moves outward only, by 8\u00a0mm at most"],
    [-2, 5, "moves inward only, by 5\u00a0mm at most"],
  ])("says how far a slip spline moves when it goes out by %s and in by %s", (outMm, inMm, said) => {
    const { instruction } = correctionText(catalogues.en, SAMPLE_NAMES);
    const params = { driveline: "rear", section: "front", engagedMm: 60, minimumEngagedMm: 45, outMm, inMm };
    expect(instruction({ code: "check-slip", params })).toContain(`over all states it ${said}; 60\u00a0mm stay engaged`);
  });
});
