import { expect, test } from "vitest";
import { exampleOrders } from "../example-figures.test-support.js";
import { SAMPLE_LABELS } from "../sample-labels.test-support.js";
import { LOW_RANGE } from "../sample-orders.test-support.js";
import { orderLines } from "./order-lines.js";

/** Kept pictures. After a change that is meant, look at them and renew them: `npx vitest run packages/figures/src/chart/order-lines.golden.test.ts -u`. */
test.each([
  ["light", 720],
  ["print", 360],
] as const)("orders, as kept: %s, %i px", async (theme, width) => {
  const svg = orderLines(exampleOrders(LOW_RANGE, 70, "en"), { labels: SAMPLE_LABELS, theme, width });
  await expect(`${svg}\n`).toMatchFileSnapshot(`../../golden/orders-${theme}-${width}.svg`);
});
