import { LANGUAGES } from "@halfturn/words";
import { describe, expect, test } from "vitest";
import { faults } from "../faults.test-support.js";
import { samplePicture, TWO_PIECE } from "../sample-drivelines.test-support.js";
import { ALL_FIGURES } from "../sample-figures.test-support.js";
import { textsOf } from "../svg-reading.test-support.js";
import { en } from "./en.js";
import { es } from "./es.js";
import { figureLabelsOf } from "./labels-of.js";

const WIDTHS = [320, 360, 520, 720, 1000];

describe("words of the figures", () => {
  test("no language leaves one of another's words standing", () => {
    const same = Object.entries(en).filter(([key, value]) => typeof value === "string" && value === es[key as keyof typeof es]);
    expect(same).toEqual([]);
  });

  test.each(LANGUAGES.flatMap((language) => Object.entries(ALL_FIGURES).map(([name, draw]) => [language, name, draw] as const)))(
    "%s fits: %s",
    (language, _name, draw) => {
      for (const width of WIDTHS) expect(faults(draw(samplePicture(TWO_PIECE), { labels: figureLabelsOf(language), width }))).toEqual([]);
    },
  );

  test.each(LANGUAGES)("%s: nothing of an ordinary driveline is cut, on a telephone or wider", (language) => {
    for (const width of [360, 720]) {
      for (const draw of Object.values(ALL_FIGURES)) {
        const cut = textsOf(draw(samplePicture(TWO_PIECE), { labels: figureLabelsOf(language), width })).filter(({ content }) =>
          content.endsWith("…"),
        );
        expect(cut.map(({ content }) => content)).toEqual([]);
      }
    }
  });
});
