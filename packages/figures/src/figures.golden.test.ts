import { describe, expect, test } from "vitest";
import { samplePicture, TWO_PIECE } from "./sample-drivelines.test-support.js";
import { ALL_FIGURES } from "./sample-figures.test-support.js";
import { SAMPLE_LABELS } from "./sample-labels.test-support.js";

/** Kept pictures. After a change that is meant, look at them and renew them: `npx vitest run packages/figures/src/figures.golden.test.ts -u`. */
describe.each(Object.entries(ALL_FIGURES))("%s, as kept", (name, draw) => {
  test.each([
    ["light", 720],
    ["print", 360],
  ] as const)("%s, %i px", async (theme, width) => {
    const svg = draw(samplePicture(TWO_PIECE), { labels: SAMPLE_LABELS, theme, width });
    await expect(`${svg}\n`).toMatchFileSnapshot(`../golden/${name}-${theme}-${width}.svg`);
  });
});
