import { expect, test } from "vitest";
import { readerOf } from "../signal/index.js";
import { must } from "../signal/shaft-angle.test-support.js";
import { recorded, shake } from "./attribution-cases.test-support.js";
import { type Attribution, attribute } from "./index.js";

/** A drive whose speed was logged, with a tone of its own that no part makes. */
async function besideTone(hertz: number, amplitude: number): Promise<Attribution> {
  const sources = [shake("propeller-shaft", 1, 2)];
  const log = { interval: 0.5, lag: 0, resolution: 0, scale: 0, noise: 0 };
  const input = recorded({ profile: { times: [0, 30], speeds: [20, 25] }, sources, roadNoise: 0.02, log }, "log");
  const channels = input.channels.map((channel) => {
    const { rate, start, length, read } = channel.samples;
    const samples = new Float64Array(length);
    read(0, samples);
    return {
      ...channel,
      samples: readerOf({ rate, start, samples: samples.map((x, n) => x + amplitude * Math.sin((2 * Math.PI * hertz * n) / rate)) }),
    };
  });
  return must(await attribute({ ...input, channels }));
}

/** A line beside its order by a quarter of a line of the map loses a twentieth in a block of 24 turns; the followed one lies on it. */
const NEAR = 0.01;

test.each([
  [50, 0.3],
  [72.5, 0.3],
  [73.05, 0.32],
  [74, 0.5],
  [34.75, 0.1],
])("a tone at %d Hz of %d m/s^2 that passes another order does not draw the followed one off its place", async (hertz, amplitude) => {
  const { contributions, verdict } = await besideTone(hertz, amplitude);
  expect(verdict).toMatchObject({ part: "propeller-shaft", order: 1 });
  const found = contributions.find(({ part, order }) => part === "propeller-shaft" && order === 1)?.amplitudes[0]?.value ?? Number.NaN;
  expect(Math.abs(found / 2 - 1)).toBeLessThan(NEAR);
});
