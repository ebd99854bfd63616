import { describe, expect, it } from "vitest";
import { SAMPLE_COINCIDENCES } from "./catalogue-strings.test-support.js";
import { catalogues } from "./catalogues.js";
import { LANGUAGES } from "./language.js";

const fan = (): string => "Cooling fan";

describe("coincidences", () => {
  it("say how far apart two orders are and what parts them", () => {
    const { coincidence } = catalogues.en.orders;
    expect(Object.values(SAMPLE_COINCIDENCES).map((of) => coincidence(of, fan))).toEqual([
      "The propeller shaft's first order lies 0.08 of a wheel order from the wheel's third order: only 50 turns of the wheel at steady speed, 164\u00a0m, part them.",
      "The engine's order 1.5 lies 0.08 of a wheel order from the transfer shaft's fourth order: only 50 turns of the wheel at steady speed, 164\u00a0m, part them; another gear parts them too.",
      "Cooling fan's first order is the same as the engine's first order: neither a recording nor a gear parts them; only taking one of the two out of the test does.",
      "The engine's half order is the same as the propeller shaft's first order: no recording parts them, another gear does.",
    ]);
  });

  it("say the same in Spanish, with its decimal sign", () => {
    const { coincidence } = catalogues.es.orders;
    expect(coincidence(SAMPLE_COINCIDENCES.near, fan)).toBe(
      "Entre el primer orden del árbol de transmisión y el tercer orden de la rueda hay 0,08 órdenes de rueda: solo 50 vueltas de rueda a velocidad constante, 164\u00a0m, los separan.",
    );
    expect(coincidence(SAMPLE_COINCIDENCES.nearByGear, fan)).toContain("el orden 1,5 del motor");
  });

  it.each(LANGUAGES)("%s speaks of accessories by their label", (language) => {
    expect(catalogues[language].orders.coincidence(SAMPLE_COINCIDENCES.same, fan)).toContain("Cooling fan");
  });
});
