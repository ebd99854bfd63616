import { expect, test } from "vitest";
import { speedFromVibration } from "../signal/index.js";
import { must } from "../signal/shaft-angle.test-support.js";
import { partsOf, recorded, shake } from "./attribution-cases.test-support.js";
import { attribute, ridgeReference } from "./index.js";

/** A drive from 22 to 24 m/s and back: 9.6 turns of the wheel a second in the middle, 35.7 of the shaft. */
const input = recorded({
  parts: partsOf({ gearRatio: null }),
  profile: { times: [0, 30, 60], speeds: [22, 24, 23] },
  sources: [shake("propeller-shaft", 1), shake("wheel", 1, 0.3)],
  roadNoise: 0.5,
});
const [channel] = input.channels;
const [WHEEL, SHAFT] = [(2 * Math.PI * 23) / 2.4, (2 * Math.PI * 23 * 3.73) / 2.4];

/** Attribution by the ridge of one order of a shaft whose speed is known to so much. */
async function byRidge(order: number, perWheelTurn: number, speed: number, share: number) {
  const range = { slowest: speed * (1 - share), fastest: speed * (1 + share) };
  const ridge = channel && speedFromVibration(channel.samples, { orders: [order], ...range });
  if (!ridge?.ok) return ridge?.code;
  return must(await attribute({ ...input, reference: ridgeReference(ridge.value, perWheelTurn, range) }));
}

test("the right assumption and a speed known to 8 % name the shaft", async () => {
  expect(await byRidge(1, 3.73, SHAFT, 0.08)).toMatchObject({ verdict: { part: "propeller-shaft", order: 1 } });
});

test("a wrong assumption finds no ridge where the speed is known, and never names the part that was assumed", async () => {
  for (const share of [0.08, 0.35]) {
    const result = await byRidge(3, 1, WHEEL, share);
    if (typeof result === "string") expect(result).toBe("shaft-angle.no-ridge");
    else expect(result?.verdict).not.toMatchObject({ part: "wheel", order: 3 });
  }
});
