import { describe, expect, it } from "vitest";
import { catalogueStrings, SAMPLE_COINCIDENCES } from "./catalogue-strings.test-support.js";
import { catalogueOf, catalogues } from "./catalogues.js";
import { SAMPLE_CHANGE_PROBLEMS, SAMPLE_NAMES } from "./correction-strings.test-support.js";
import { changeProblemText, correctionText } from "./correction-text.js";
import { findingText } from "./finding-text.js";
import { LANGUAGES } from "./language.js";
import { isUnits } from "./units.js";

const METRIC = /\d[\u00a0 ]?(?:mm|km\/h|m)(?![\p{L}\d/²])/gu;
const US = /\d[\u00a0 ]?(?:mph|ft)(?![\p{L}\d/])/gu;
/** A part that is bought in millimetres says them beside the inches. */
const BESIDE = /\(-?[\d.,]+\u00a0mm\)/g;
/** What stands in a file or is typed as it stands there: commands, and road speeds that a flag reads. */
const TYPED =
  /[\w-]+=-?\d+mm|km\/h, or with its unit: 65mph|km\/h, o con su unidad: 65mph|from [\w-]+ to [\w-]+\u00a0km\/h.*|de [\w-]+ a [\w-]+\u00a0km\/h.*/g;

describe.each(LANGUAGES)("%s in US units", (language) => {
  const us = catalogueOf(language, "us");

  it("is metric unless asked otherwise", () => {
    expect(catalogueOf(language)).toBe(catalogues[language]);
    expect(catalogueOf(language, "metric")).toBe(catalogues[language]);
    expect(catalogueOf(language, "us")).toBe(us);
  });

  it("has no metric length or road speed left in any sentence, but beside a part that is bought", () => {
    const left = [...catalogueStrings(us)].filter(([, text]) => text.replaceAll(BESIDE, "").replaceAll(TYPED, "").match(METRIC));
    expect(left).toEqual([]);
  });

  it("has no mile or foot in any metric sentence", () => {
    expect([...catalogueStrings(catalogueOf(language))].filter(([, text]) => text.replaceAll(TYPED, "").match(US))).toEqual([]);
  });
});

const en = catalogueOf("en", "us");

describe("sentences in US units", () => {
  it("say what to buy in inches and in the millimetres it is stocked in", () => {
    const { change, instruction, reason } = correctionText(en, SAMPLE_NAMES);
    expect(change({ adjuster: "plate", amount: 6, unit: "mm" }, "support-drop")).toBe("plate: 0.236\u00a0in (6\u00a0mm) lower");
    expect(change({ adjuster: "plate", amount: -6.35, unit: "mm" }, "mount-spacer")).toBe("plate: 0.25\u00a0in lower");
    expect(change({ adjuster: "slot", amount: -4, unit: "mm" }, "support-shift")).toBe("slot: 0.157\u00a0in to the right");
    expect(change({ adjuster: "wedge", amount: -2.5, unit: "deg" }, "axle-wedge")).toBe("wedge: 2.5° pinion nose down");
    expect(instruction({ code: "fit-mount-spacer", params: { adjuster: "plate", changeMm: 6, totalMm: 9.525, driveline: "rear" } })).toBe(
      "plate: bring the spacers under the rear mount of the powertrain to 0.375\u00a0in in all; the mount goes up by 0.236\u00a0in.",
    );
    expect(reason({ code: "correction.removal-exceeds-fitted", params: { adjuster: "plate", amountMm: -9, fittedMm: 6 } })).toContain(
      "0.354\u00a0in cannot be taken out where 0.236\u00a0in is fitted",
    );
  });

  it("say how far to drive in feet and how fast in miles an hour", () => {
    expect(en.orders.coincidence(SAMPLE_COINCIDENCES.near, (id) => id)).toContain(
      "50 turns of the wheel at steady speed, 538\u00a0ft, part them",
    );
    const followed = {
      code: "recording.speed-followed",
      severity: "warn",
      path: "",
      params: { part: "wheel", order: 1, fromKmh: 80, toKmh: 120 },
    } as const;
    expect(findingText(en, followed).says).toContain("within 50 to 75\u00a0mph");
    expect(findingText(catalogueOf("es", "us"), followed).says).toContain("entre 50 y 75\u00a0mph");
    expect(findingText(catalogueOf("en"), followed).says).toContain("within 80 to 120\u00a0km/h");
  });

  it("name a bound of the stock so that typing it is within the stock", () => {
    const fitted = SAMPLE_CHANGE_PROBLEMS.find(({ code }) => code === "beyond-fitted");
    expect(fitted && changeProblemText(en, fitted)).toContain(
      '0.354\u00a0in (9\u00a0mm) cannot be taken out at "plate", where 0.236\u00a0in (6\u00a0mm) is fitted',
    );
    const beyond = { code: "beyond-stock", params: { adjuster: "plate", amount: 30, unit: "mm", minimum: -6, maximum: 12 } } as const;
    expect(changeProblemText(en, beyond)).toContain("write from -0.236\u00a0in (-6\u00a0mm) to 0.472\u00a0in (12\u00a0mm)");
  });
});

it("knows its systems of units", () => {
  expect(["metric", "us", "imperial", ""].filter(isUnits)).toEqual(["metric", "us"]);
});
