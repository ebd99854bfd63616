import type { Finding } from "@halfturn/engine/findings";
import { expect, test } from "vitest";
import { catalogues } from "./catalogues.js";
import { findingText } from "./finding-text.js";
import { LANGUAGES } from "./language.js";
import { signalFaultText } from "./vibration-words.js";

const coincidence: Finding = {
  code: "attribution.coincidence",
  severity: "warn",
  path: "",
  params: { part: "propeller-shaft", order: 1, otherPart: "engine", otherOrder: 1, partedByGear: true },
};

test("a coincidence names both orders and what parts them", () => {
  const { says, doNext } = findingText(catalogues.en, coincidence);
  expect(says).toBe("The propeller shaft's first order and the engine's first order lie in one place.");
  expect(doNext).toContain("another gear");
  expect(findingText(catalogues.es, coincidence).says).toBe(
    "Están en el mismo sitio el primer orden del árbol de transmisión y el primer orden del motor.",
  );
  const { partedByGear: _, ...params } = coincidence.params;
  expect(findingText(catalogues.en, { ...coincidence, params: { ...params, partedByGear: false, wheelTurns: 50 } }).doNext).toContain(
    "50 turns",
  );
});

test("an order that cannot be seen is never said to be absent", () => {
  const unseen: Finding = {
    code: "attribution.order-not-observable",
    severity: "note",
    path: "",
    params: { part: "engine", order: 3, lowestHz: 74.6, highestHz: 104.7, limitHz: 49, foldsToHz: 4.5 },
  };
  expect(findingText(catalogues.en, unseen).says).toBe(
    "The engine's third order ran at 75 to 105\u00a0Hz; the recording shows nothing above 49\u00a0Hz. Its silence rules nothing out. If the sensor lets it through, it shows near 5\u00a0Hz.",
  );
  const { foldsToHz: _, ...params } = unseen.params;
  expect(findingText(catalogues.en, { ...unseen, params }).says).not.toContain("lets it through");
});

test("a correction of the speed has its sign", () => {
  const corrected: Finding = { code: "attribution.speed-corrected", severity: "note", path: "", params: { correctionShare: 0.0123 } };
  expect(findingText(catalogues.en, corrected).says).toContain("+1.2\u00a0%");
  expect(findingText(catalogues.es, { ...corrected, params: { correctionShare: -0.0123 } }).says).toContain("-1,2\u00a0%");
});

test.each(LANGUAGES)("%s says a standstill with or without its time", (language) => {
  const { vibration, numbers } = catalogues[language];
  const fault = { ok: false, code: "shaft-angle.standstill", path: "speeds[3]" } as const;
  expect(signalFaultText(vibration, { ...fault, params: { time: 12.5 } }, numbers)).toMatch(/12[.,]5\u00a0s/);
  expect(signalFaultText(vibration, { ...fault, params: {} }, numbers)).not.toMatch(/\d/);
});
