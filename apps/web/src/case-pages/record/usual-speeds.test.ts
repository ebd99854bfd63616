import { catalogueOf } from "@halfturn/words";
import { expect, test } from "vitest";
import { usualSpeeds } from "./usual-speeds.js";

test("the speeds to tap are whole in their own units", () => {
  for (const units of ["metric", "us"] as const)
    for (const speed of usualSpeeds(units)) expect(catalogueOf("en", units).numbers.roadSpeed(speed)).toMatch(/^\d+\u00a0(km\/h|mph)$/);
});
