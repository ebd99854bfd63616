import { newCase } from "@halfturn/casefile";
import { expect, test } from "vitest";
import { catalogueOf } from "./catalogues.js";
import { correctionNames } from "./correction-names.js";
import { limitUseText } from "./limit-use-text.js";

const document = newCase({ id: "one", title: "One", layout: "one-piece", createdAt: "2026-01-01" });
const use = { limit: "equivalent-angle", of: "rear", driveline: "rear", state: "as-gauged" } as const;

const said = (valueDeg: number, limitDeg: number, language: "en" | "es" = "en"): readonly string[] => {
  const catalogue = catalogueOf(language);
  return limitUseText({ ...use, valueDeg, limitDeg }, catalogue, correctionNames(document, catalogue)).slice(1, 3);
};

test("an angle just beyond its limit is written so that it is seen to be", () => {
  expect(said(4.2, 3)).toEqual(["4.20°", "3.00°"]);
  expect(said(3.002, 3)).toEqual(["3.002°", "3.000°"]);
  expect(said(3.0002, 3, "es")).toEqual(["3,0002°", "3,0000°"]);
  expect(said(3, 3)).toEqual(["3.00°", "3.00°"]);
});

test("accelerations stay as they are", () => {
  const catalogue = catalogueOf("en");
  const text = limitUseText(
    { ...use, limit: "driven-acceleration", valueRadS2: 512.4, limitRadS2: 500 },
    catalogue,
    correctionNames(document, catalogue),
  );
  expect(text.slice(1, 3)).toEqual([catalogue.numbers.acceleration(512.4), catalogue.numbers.acceleration(500)]);
});
