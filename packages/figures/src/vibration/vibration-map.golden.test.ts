import { expect, test } from "vitest";
import { SAMPLE_LABELS } from "../sample-labels.test-support.js";
import { SAMPLE_VIBRATION } from "./sample-vibration.test-support.js";
import { vibrationMap } from "./vibration-map.js";

/** Kept pictures. After a change that is meant, look at them and renew them: `npx vitest run packages/figures/src/vibration -u`. */
test.each([
  ["light", 720],
  ["print", 360],
] as const)("vibration, as kept: %s, %i px", async (theme, width) => {
  const svg = vibrationMap(SAMPLE_VIBRATION, { labels: SAMPLE_LABELS, theme, width });
  await expect(`${svg}\n`).toMatchFileSnapshot(`../../golden/vibration-${theme}-${width}.svg`);
});
