import { radiansToDegrees } from "@halfturn/engine/units";
import { describe, expect, test } from "vitest";
import { samplePicture, TWO_PIECE } from "../sample-drivelines.test-support.js";
import { SAMPLE_LABELS } from "../sample-labels.test-support.js";
import { textsOf } from "../svg-reading.test-support.js";
import { phasingView } from "./phasing-view.js";

const options = { labels: SAMPLE_LABELS };
const said = (svg: string): string[] => textsOf(svg).map(({ content }) => content);
/** Dashes of a yoke that is not there or not sure. */
const GHOST = 'stroke-dasharray="4 3"';

describe("phasing view", () => {
  test("writes each phasing and the best one of the analysis", () => {
    const picture = samplePicture(TWO_PIECE);
    const texts = said(phasingView(picture, options));
    const best = radiansToDegrees(picture.analysis?.cancellation.bestPhasing["section-1"] as never);
    expect(texts).toContain("Phasing 90.00°");
    expect(texts).toContain(`Best ${best.toFixed(2)}°`);
  });

  test("a phasing repeats every half turn", () => {
    const turned = samplePicture({ ...TWO_PIECE, phasingsDeg: [-90, 180] });
    expect(said(phasingView(turned, options))).toEqual(expect.arrayContaining(["Phasing 90.00°", "Phasing 0.00°"]));
  });

  test("draws no ghost where the yokes stand as well as they can", () => {
    const planar = samplePicture({
      kinds: ["cross", "cross"],
      shafts: [{ inclinationDeg: 0 }, { inclinationDeg: 5 }, { inclinationDeg: 0 }],
      phasingsDeg: [0],
    });
    const svg = phasingView(planar, options);
    expect(svg).not.toContain(GHOST);
    expect(said(svg)).toContain(SAMPLE_LABELS.phasingAsBest);
    expect(
      phasingView(
        samplePicture({
          kinds: ["cross", "cross"],
          shafts: [{ inclinationDeg: 0 }, { inclinationDeg: 5 }, { inclinationDeg: 0 }],
          phasingsDeg: [90],
        }),
        options,
      ),
    ).toContain(GHOST);
  });

  test("a phasing that nobody measured is said to be so and drawn dashed", () => {
    const picture = samplePicture({
      kinds: ["cross", "cross"],
      shafts: [{ inclinationDeg: 0 }, { inclinationDeg: 5 }, { inclinationDeg: 0 }],
    });
    const driveline = {
      ...picture.driveline,
      sections: picture.driveline.sections.map((section) => ({ ...section, phasingMeasured: false })),
    };
    const svg = phasingView({ ...picture, driveline }, options);
    expect(said(svg)).toContain(SAMPLE_LABELS.notMeasured);
    expect(svg).toContain(GHOST);
    expect(said(phasingView(picture, options))).not.toContain(SAMPLE_LABELS.notMeasured);
  });

  test("says when a phasing is not known and when there is no section", () => {
    expect(said(phasingView(samplePicture({ ...TWO_PIECE, phasingsDeg: [null, 0] }), options))).toContain(SAMPLE_LABELS.phasingNotKnown);
    expect(
      said(phasingView(samplePicture({ kinds: ["cross"], shafts: [{ inclinationDeg: 0 }, { inclinationDeg: 2 }] }), options)),
    ).toContain(SAMPLE_LABELS.noSection);
  });
});
