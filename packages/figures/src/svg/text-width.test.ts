import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fitText, textWidth, wrapText } from "./text-width.js";

const texts = fc.oneof(fc.string({ unit: "grapheme" }), fc.lorem({ maxCount: 12 }));
const rooms = fc.double({ min: 20, max: 400, noNaN: true });

describe("text that must fit", () => {
  test("is never wider than its room, cut at the end with an ellipsis", () => {
    fc.assert(
      fc.property(texts, rooms, fc.boolean(), (text, room, bold) => {
        const shown = fitText(text, room, 13, bold);
        expect(textWidth(shown, 13, bold)).toBeLessThanOrEqual(room);
        if (shown !== text && shown !== "") expect(text.startsWith(shown.slice(0, -1))).toBe(true);
      }),
    );
  });

  test("wraps at spaces without losing a word that fits on a line", () => {
    fc.assert(
      fc.property(fc.lorem({ maxCount: 12 }), (text) => {
        const lines = wrapText(text, 200, 12);
        expect(lines.join(" ")).toBe(text);
        for (const line of lines) expect(textWidth(line, 12)).toBeLessThanOrEqual(200);
      }),
    );
  });

  test("bold is wider, wide signs are wider than narrow ones", () => {
    expect(textWidth("angle", 13, true)).toBeGreaterThan(textWidth("angle", 13));
    expect(textWidth("WWW", 13)).toBeGreaterThan(textWidth("iii", 13));
  });
});
