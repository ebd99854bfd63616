import { catalogueOf } from "@halfturn/words";
import { describe, expect, it } from "vitest";
import { jointLines } from "./joints.js";
import { paintOf, unpainted, widthOf } from "./paint.js";
import { shaftLines } from "./shafts.js";
import { table } from "./table.js";
import type { View } from "./view.js";
import { pageWidth, wrap } from "./wrap.js";

const plain: View = { words: catalogueOf("en"), paint: paintOf(false), width: 80 };
const painted: View = { ...plain, paint: paintOf(true) };
const bare = (lines: readonly string[]): readonly string[] => lines.map(unpainted);
const name = (id: string): string => id;

describe("table", () => {
  it("aligns columns by what is seen, painted or not", () => {
    const rows = (view: View) =>
      table(
        [
          ["a", view.paint("bad", "12"), "x"],
          ["long", "3", view.paint("good", "y")],
        ],
        ["left", "right"],
      );
    expect(rows(plain)).toEqual(["  a     12  x", "  long   3  y"]);
    expect(bare(rows(painted))).toEqual(rows(plain));
  });

  it("leaves no blanks at the end of a line", () => {
    expect(
      table([
        ["a", ""],
        ["b", "c"],
      ]),
    ).toEqual(["  a", "  b  c"]);
  });
});

describe("wrap", () => {
  it("breaks between words and hangs the first line out", () => {
    expect(wrap("one two three", 9, "  ", "")).toEqual(["one two", "  three"]);
  });

  it("never breaks inside a word, and keeps every word", () => {
    expect(wrap("gauging[0].readings[12] x", 6, "")).toEqual(["gauging[0].readings[12]", "x"]);
  });

  it("takes 80 columns where the width is unknown, within what reads well", () => {
    expect([undefined, 20, 90, 300].map(pageWidth)).toEqual([80, 60, 90, 100]);
  });
});

describe("paint", () => {
  it("adds colour and nothing else", () => {
    expect(widthOf(paintOf(true)("doubt", "2.5° ± 0.1°"))).toBe(11);
    expect(paintOf(true)("bad", "")).toBe("");
    expect(paintOf(false)("bad", "over")).toBe("over");
  });
});

describe("shafts", () => {
  it("say which end is lower in words, never by a sign", () => {
    const at = (value: number) => ({ value, u: 0.1, interval95: [value - 0.2, value + 0.2] as const });
    const shafts = [
      { id: "source", inclinationDeg: at(3.1), headingDeg: null },
      { id: "front", inclinationDeg: at(-2.35), headingDeg: null },
      { id: "back", inclinationDeg: at(0), headingDeg: null },
      { id: "driven", inclinationDeg: null, headingDeg: null },
    ];
    expect(shaftLines(shafts, name, plain)).toEqual([
      "Shafts",
      "  Shaft   Inclination",
      "  source  3.10° ± 0.20°  driven end lower",
      "  front   2.35° ± 0.20°  source end lower",
      "  back    0.00° ± 0.20°  level",
      "  driven  not gauged",
    ]);
  });
});

describe("joints", () => {
  it("give angle, interval, limit and the verdict in words, and name what is no cross joint", () => {
    const joint = (id: string, value: number, verdict: "over" | "within") => ({
      id,
      operatingAngleDeg: { value, u: 0.05, interval95: [value - 0.1, value + 0.1] as const },
      maximumDeg: 4.8,
      minimumDeg: 0.5,
      verdict,
    });
    const lines = (view: View) =>
      jointLines([joint("J1", 14.39, "over"), joint("J2", 2.75, "within")], ["double-cross", "cross"], name, view);
    expect(lines(plain)).toEqual([
      "Joints",
      "  Joint   Angle  95\u00a0% interval     Limit           Verdict",
      "  J1     14.39°  14.29° to 14.49°  0.50° to 4.80°  over the limit",
      "  J2      2.75°  2.65° to 2.85°    0.50° to 4.80°  within limits",
      "  J1: double cross joint",
    ]);
    expect(bare(lines(painted))).toEqual(lines(plain));
  });
});
