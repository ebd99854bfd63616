import { describe, expect, it } from "vitest";
import { nearest, suggestionFor } from "./suggest.js";

describe("what was likely meant", () => {
  it("is a key without its unit", () => {
    expect(nearest("phasing", ["id", "phasingDeg", "phasingMeasured"])).toBe("phasingDeg");
    expect(nearest("length", ["id", "lengthMm"])).toBe("lengthMm");
  });

  it("is no key that merely begins alike", () => {
    expect(nearest("phas", ["id", "phasingDeg"])).toBeNull();
  });

  it("is the one word that begins as written", () => {
    expect(suggestionFor("L", ["left", "right"])).toEqual({ suggestion: "left" });
    expect(suggestionFor("driven", ["driven-end", "source-end"])).toEqual({ suggestion: "driven-end" });
    expect(suggestionFor("front:", ["front:source-end", "front:driven-end"])).toEqual({});
    expect(suggestionFor("", ["left"])).toEqual({});
  });

  it("is nothing where no letter is shared", () => {
    expect(suggestionFor("6", ["5"])).toEqual({});
  });
});
