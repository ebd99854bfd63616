import { expect, test } from "vitest";
import { samplePicture, TWO_PIECE } from "../sample-drivelines.test-support.js";
import { SAMPLE_LABELS } from "../sample-labels.test-support.js";
import { textsOf } from "../svg-reading.test-support.js";
import { comparisonView } from "./comparison-view.js";

const options = { labels: SAMPLE_LABELS };
const gentle = samplePicture(TWO_PIECE);
const steep = samplePicture({
  ...TWO_PIECE,
  shafts: TWO_PIECE.shafts.map(({ inclinationDeg }) => ({ inclinationDeg: (inclinationDeg ?? 0) * 2 })),
});
const said = (svg: string): readonly string[] => textsOf(svg).map(({ content }) => content);
const factorIn = (svg: string): readonly string[] => said(svg).filter((text) => /times larger|scale/.test(text));

test("every panel is named, in order, and both say each joint's angle and verdict", () => {
  const texts = said(
    comparisonView(
      [
        { name: "As found", picture: steep },
        { name: "Predicted", picture: gentle },
      ],
      options,
    ),
  );
  expect(texts.indexOf("As found")).toBeGreaterThanOrEqual(0);
  expect(texts.indexOf("Predicted")).toBeGreaterThan(texts.indexOf("As found"));
  const alone = said(comparisonView([{ name: "One", picture: gentle }], options)).filter((text) => text.endsWith("°"));
  for (const angle of alone) expect(texts).toContain(angle);
});

test("one factor holds for all panels, the gentlest, whichever comes first", () => {
  const both = [
    { name: "A", picture: steep },
    { name: "B", picture: gentle },
  ];
  const factor = factorIn(comparisonView(both, options));
  expect(factor).toHaveLength(1);
  expect(factorIn(comparisonView(both.toReversed(), options))).toEqual(factor);
  expect(factorIn(comparisonView([{ name: "A", picture: steep }], options))).toEqual(factor);
  expect(factorIn(comparisonView([{ name: "B", picture: gentle }], options))).not.toEqual(factor);
});

test("a reader who does not see it is told each panel by its name", () => {
  const svg = comparisonView(
    [
      { name: "As found", picture: steep },
      { name: "Measured", picture: gentle },
    ],
    options,
  );
  expect(/<desc>([^<]*)<\/desc>/.exec(svg)?.[1]).toMatch(/As found: J1.*Measured: J1/);
});
