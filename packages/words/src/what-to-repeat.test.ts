import { expect, test } from "vitest";
import { catalogues } from "./catalogues.js";
import { isMeasuredHeading } from "./what-to-repeat.js";

const name = (id: string): string => id;

test("a direction that was measured is to be measured again, one that was taken as straight is to be measured", () => {
  const once = { of: "heading:front", path: "gauging[0]", share: 0.4 };
  const again = { ...once, path: "gauging[0].headings[1]" };
  expect(isMeasuredHeading(once.path)).toBe(false);
  expect(isMeasuredHeading(again.path)).toBe(true);
  expect(catalogues.en.phrases.repeat(once, name)).toMatch(/^Measure how far front runs to one side/);
  expect(catalogues.en.phrases.repeat(again, name)).toMatch(/^Measure again how far front runs to one side/);
  expect(catalogues.es.phrases.repeat(once, name)).toMatch(/^Mida cuánto/);
  expect(catalogues.es.phrases.repeat(again, name)).toMatch(/^Mida otra vez cuánto/);
});
