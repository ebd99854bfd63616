import fc from "fast-check";
import { expect, test } from "vitest";
import { inHundredths } from "./in-hundredths.js";

test("an hour's pieces are no more than a hundred words, each within a hundredth of the work, the last one its end", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 20_000 }), (pieces) => {
      const told: number[] = [];
      let longest = 0;
      const tell = inHundredths((share) => told.push(share));
      for (let piece = 1; piece <= pieces; piece++) {
        const share = piece / pieces;
        tell(share);
        longest = Math.max(longest, share - (told.at(-1) ?? 0));
      }
      expect(longest).toBeLessThan(0.01);
      expect(told.length).toBeLessThanOrEqual(100);
      expect(told.at(-1)).toBe(1);
      expect(told).toEqual(told.toSorted((a, b) => a - b));
    }),
    { numRuns: 20 },
  );
});
