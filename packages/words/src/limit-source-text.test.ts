import { LIMIT_SOURCES } from "@halfturn/engine/limits";
import { expect, test } from "vitest";
import { catalogues } from "./catalogues.js";
import { limitSourceText } from "./limit-source-text.js";

test("a built-in limit says in the reader's language where it comes from", () => {
  for (const source of LIMIT_SOURCES) expect(limitSourceText(catalogues.es, source)).not.toBe(limitSourceText(catalogues.en, source));
  expect(limitSourceText(catalogues.en, "common-practice")).toBe("common practice, no source");
});

test("a limit of the case says what the case says, or that it says nothing", () => {
  expect(limitSourceText(catalogues.es, "Workshop manual, page 12")).toBe("Workshop manual, page 12");
  expect(limitSourceText(catalogues.en, "limits.crossMaximumDeg")).toBe("set in this case, without a source (limits.crossMaximumDeg)");
});
